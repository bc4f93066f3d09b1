package leat.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import leat.script.ScriptSession.Suggestion;
import leat.script.ScriptSession.Suggestions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What Tab offers. */
@Tag("law")
class SuggestionTest {

    @TempDir
    Path folder;

    static Stream<Function<Path, SessionTrial>> languages() {
        return Stream.of(SessionTrial::inJavaScript, SessionTrial::inJava);
    }

    private static List<String> texts(SessionTrial console, String typed) {
        return console.session().suggest(typed, typed.length()).list().stream()
                .map(Suggestion::text)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("languages")
    void wordsMethodsAndFiles(Function<Path, SessionTrial> language) throws IOException {
        Files.createDirectory(folder.resolve("notes"));
        Files.writeString(folder.resolve("levels.csv"), "");
        Files.writeString(folder.resolve("notes/old.csv"), "");
        Files.writeString(folder.resolve(".hidden"), "");
        try (SessionTrial console = language.apply(folder)) {
            console.type("var meadow = yard(\"M\");");
            assertEquals(List.of("rotor(", "rotorFamily(", "route("), texts(console, "ro"));
            assertEquals(List.of("rotor(", "rotorFamily("), texts(console, "print(rot"));
            assertEquals(List.of("meadow"), texts(console, "print(mea"));
            assertEquals(List.of("terrain()"), texts(console, "meadow.terr"));
            assertEquals(List.of("radius("), texts(console, "rotor(\"R\", at(1, (2))).arc(0, 90).ra"));
            assertEquals(List.of("psi("), texts(console, "Pressure.ps"));
            assertEquals(List.of("inBar()"), texts(console, "Pressure.psi(3).inB"));
            assertEquals(List.of("staticPressure("), texts(console, "mains(\"s\", at(0, 0))\n  .sta"));
            assertEquals(List.of("levels.csv\"", "notes/"), texts(console, "levels(\""));
            assertEquals(List.of("old.csv\""), texts(console, "levels(\"notes/o"));
            assertEquals(List.of(), texts(console, "levels(\"../"));
            assertEquals(List.of(), texts(console, "nowhere.ra"));
            assertTrue(texts(console, "").contains("yard("));
        }
    }

    @ParameterizedTest
    @MethodSource("languages")
    void whatEveryObjectHasIsNotOffered(Function<Path, SessionTrial> language) {
        try (SessionTrial console = language.apply(folder)) {
            console.type("var meadow = yard(\"M\");");
            assertFalse(texts(console, "meadow.").toString().contains("getClass"));
            assertFalse(texts(console, "d").toString().contains("$"));
        }
    }

    @Test
    void listsAndTextsOfJavaScriptHaveTheirOwnMethods() {
        try (SessionTrial console = SessionTrial.inJavaScript(folder)) {
            console.type("let y = yard('M'); let t = 'x'; let o = {deep: 1}");
            assertTrue(texts(console, "y.water().heads().").contains("filter"));
            assertTrue(texts(console, "t.").contains("startsWith"));
            assertTrue(texts(console, "Math.").contains("max"));
            assertTrue(texts(console, "o.").contains("deep"));
        }
    }

    @Test
    void aSuggestionTakesThePlaceOfWhatIsTyped() {
        try (SessionTrial console = SessionTrial.inJavaScript(folder)) {
            Suggestions found = console.session().suggest("let r = roto + 1", 12);
            assertEquals(8, found.from());
            assertEquals("rotor(name, at)", found.list().get(0).shown());
        }
    }

    @Test
    void lookingAtAPropertyThatFailsOffersNothing() {
        try (SessionTrial console = SessionTrial.inJavaScript(folder)) {
            console.type("Object.defineProperty(globalThis, 'trap', { get() { throw new Error('x') } })");
            assertEquals(List.of(), texts(console, "trap."));
        }
    }
}
