package leat.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a script in a file cannot reach, an entry typed into the console cannot reach either. */
@Tag("law")
class SessionConfinementTest {

    @TempDir
    Path outside;

    private SessionTrial open() throws IOException {
        Path folder = Files.createDirectory(outside.resolve("yard")).toRealPath();
        Files.writeString(outside.resolve("secret.txt"), "secret");
        Files.writeString(outside.resolve("secret.js"), "export const secret = 'secret';");
        Files.createSymbolicLink(folder.resolve("link.txt"), outside.resolve("secret.txt"));
        Files.createSymbolicLink(folder.resolve("link.js"), outside.resolve("secret.js"));
        Files.createSymbolicLink(folder.resolve("up"), outside);
        return SessionTrial.ofToys(folder);
    }

    /** Outside a module {@code this} is the global object, and its constructor the language's own: no escape. */
    static List<String> attempts() {
        return Escapes.attempts().stream()
                .filter(attempt -> !attempt.equals("print(this.constructor)"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("attempts")
    void anEscapeFails(String entry) throws IOException {
        try (SessionTrial console = open()) {
            String answer = console.type(entry);
            assertTrue(answer.startsWith("input:"), answer);
            assertFalse(answer.contains("secret\"") || answer.contains(outside.toString()), answer);
        }
    }

    /** In a console an attempt may come in several entries. */
    static List<List<String>> inSteps() {
        return List.of(
                List.of("let f = feet", "print(f.constructor('return Java')())"),
                List.of("let g = globalThis", "print(g.Java.type('java.lang.System'))"),
                List.of("let e; try { feet('x') } catch (x) { e = x }", "print(e.getClass())"),
                List.of("function Java() { return Polyglot }", "print(Java().eval('js', '1'))"),
                List.of("let F = (() => {}).constructor", "print(new F('return java.lang.System')().getenv())"),
                List.of("let read = readText", "print(read('../secret.txt'))"),
                List.of("var Polyglot = { eval: feet }", "print(Polyglot.eval('js'))"),
                List.of("import('../secret.js').then(m => print(m.secret))", "feet()"));
    }

    @ParameterizedTest
    @MethodSource("inSteps")
    void anEscapeInSeveralEntriesFails(List<String> entries) throws IOException {
        try (SessionTrial console = open()) {
            List<String> answers = new ArrayList<>();
            entries.forEach(entry -> answers.add(console.type(entry)));
            String last = answers.get(answers.size() - 1);
            assertTrue(last.startsWith("input:"), last);
            assertFalse(String.join("\n", answers).contains("secret\n"), last);
        }
    }

    @Test
    void whatOneSessionSpoilsIsWholeInTheNext() throws IOException {
        try (SessionTrial console = open()) {
            console.type("Array.from = () => 1; Object.prototype.x = 1; Object.freeze = 1");
        }
        try (SessionTrial console = SessionTrial.ofToys(outside)) {
            assertEquals("1 undefined", console.type("print(Array.from([1])[0] + ' ' + ({}).x)"));
        }
    }
}
