package leat.docs;

import static java.util.stream.Collectors.toCollection;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import leat.model.plan.Part;
import leat.model.plan.Parts;
import leat.script.ScriptHost;
import leat.script.ScriptRequest;
import leat.script.ScriptRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page of words has each word that a script can say, and under the word each setter of its part; and no others. */
class WordsPageTest {

    private static final String PAGE = Pages.read("docs/reference/words.md");

    /** A part is headed by the words that make it: {@code ### `mains`, `pump`}. */
    private static final Pattern PART = Pattern.compile("(?ms)^### (`.*?)$(.*?)(?=^##|\\z)");

    private static final Pattern WORD_ROW = Pattern.compile("(?m)^\\| `([a-zA-Z]+)` \\|");
    private static final Pattern SETTER_ROW = Pattern.compile("(?m)^\\| `\\.([a-zA-Z]+)` \\|");
    private static final Pattern CODE = Pattern.compile("`([a-zA-Z]+)`");

    @Test
    void wordsAreThoseOfAScript(@TempDir Path folder) throws IOException {
        Path script = Files.writeString(folder.resolve("words.js"), "print(Object.keys(globalThis).join(' '));\n");
        var printed = new Printed();
        ScriptRunner.ofLeat().run(ScriptRequest.of(script), printed);
        SortedSet<String> words = Stream.of(printed.text.split(" "))
                .filter(word -> Character.isLowerCase(word.charAt(0)))
                .collect(toCollection(TreeSet::new));
        assertEquals(words, described());
    }

    @Test
    void settersAreThoseOfTheParts() {
        for (Method word : Parts.class.getMethods()) {
            if (Modifier.isStatic(word.getModifiers()) && Part.class.isAssignableFrom(word.getReturnType())) {
                String section = PART.matcher(PAGE)
                        .results()
                        .filter(part -> first(CODE, part.group(1)).contains(word.getName()))
                        .map(part -> part.group(2))
                        .findFirst()
                        .orElse("");
                assertEquals(setters(word.getReturnType()), first(SETTER_ROW, section), word.getName());
            }
        }
    }

    /** Words in the first column of tables, and those that head a part. */
    private static SortedSet<String> described() {
        SortedSet<String> words = first(WORD_ROW, PAGE);
        PART.matcher(PAGE).results().forEach(part -> words.addAll(first(CODE, part.group(1))));
        return words;
    }

    private static SortedSet<String> first(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(found -> found.group(1)).collect(toCollection(TreeSet::new));
    }

    private static SortedSet<String> setters(Class<?> part) {
        return Arrays.stream(part.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()) && !method.isSynthetic())
                .map(Method::getName)
                .collect(toCollection(TreeSet::new));
    }

    /** Keeps what a script prints. */
    private static final class Printed implements ScriptHost {

        private String text = "";

        @Override
        public void print(String line) {
            text += line;
        }

        @Override
        public void note(String line) {
            text += line;
        }

        @Override
        public void progress(double fraction, String what) {
            // nobody looks
        }
    }
}
