package leat.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import leat.model.plan.Parts;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every word that can be typed is explained, whoever adds it. */
@Tag("law")
class HelpTest {

    private final Surface surface = Surface.ofLeat();
    private final Prelude prelude = new Prelude(surface, List.of(Parts.class));
    private final Help help = new Help(surface, prelude);

    @Test
    void everyFunctionStandsUnderATopic() {
        String topics = help.topics();
        for (String name : prelude.functionNames()) {
            assertTrue(topics.matches("(?s).*\\b" + name + "\\b.*"), name);
        }
        assertFalse(topics.startsWith("Words"), "a word of Parts without a heading");
    }

    @Test
    void everyFunctionIsExplainedByItsFormAndAnExample() {
        for (String name : prelude.functionNames()) {
            String text = help.of(name);
            assertTrue(text.startsWith(name + "("), text);
            boolean takesNothing =
                    prelude.function(name).orElseThrow().overloads().get(0).getParameterCount() == 0;
            assertTrue(takesNothing || text.contains("for example\n  " + name + "("), text);
        }
    }

    @Test
    void everyTypeIsExplained() {
        prelude.types().forEach((name, type) -> assertTrue(help.of(name).startsWith(name), name));
    }

    /** A made-up example that Leat itself refuses would be worse than none; what it names need not be there. */
    @Test
    void examplesCanBeTypedInEitherLanguage(@TempDir Path folder) {
        List<String> refused = new ArrayList<>();
        SortedMap<String, Operation> functions = prelude.functions();
        try (SessionTrial javaScript = SessionTrial.inJavaScript(folder);
                SessionTrial java = SessionTrial.inJava(folder)) {
            functions.forEach((name, function) -> {
                String example = new WordExample(functions).of(function).orElse("none for " + name);
                for (SessionTrial console : List.of(javaScript, java)) {
                    String answer = console.type(example);
                    if (answer.startsWith("input:") && !answer.contains("it must be a key of the catalogue")) {
                        refused.add(answer);
                    }
                }
            });
        }
        assertEquals(List.of(), refused);
    }

    @Test
    void aMethodIsFoundOnAllTypesThatHaveIt() {
        assertTrue(help.of("radius").contains("of head part\n  radius(radius: length)"), help.of("radius"));
    }

    @Test
    void commentsOfTheSourcesAreQuoted() {
        assertQuotes("tree", "A tree by the diameter of its trunk at breast height; its root zone follows from that.");
        assertQuotes("rotor", "Key of its family in the catalogue of heads, such as spray-3_7.");
        assertQuotes("plan", "The yard with all that is not given planned");
        assertQuotes("Spray", "that the builder sets it to");
    }

    private void assertQuotes(String word, String comment) {
        String onOneLine = help.of(word).replaceAll("\\s+", " ");
        assertTrue(onOneLine.contains(comment), onOneLine);
    }
}
