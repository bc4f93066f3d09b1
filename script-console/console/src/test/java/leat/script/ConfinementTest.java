package leat.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A script reaches nothing outside its folder and nothing of the host but the surface, and can always be stopped. */
@Tag("law")
class ConfinementTest {

    @TempDir
    Path outside;

    private Path folder;

    @BeforeEach
    void makeFolders() throws IOException {
        folder = Files.createDirectory(outside.resolve("yard")).toRealPath();
        Files.writeString(outside.resolve("secret.txt"), "secret");
        Files.writeString(outside.resolve("secret.js"), "export const secret = 'secret';");
        Files.createSymbolicLink(folder.resolve("link.txt"), outside.resolve("secret.txt"));
        Files.createSymbolicLink(folder.resolve("link.js"), outside.resolve("secret.js"));
        Files.createSymbolicLink(folder.resolve("up"), outside);
    }

    /** Each attempt tries to lay hands on something; print must never be reached with it. */
    @ParameterizedTest
    @MethodSource("leat.script.Escapes#attempts")
    void anEscapeFails(String script) {
        String answer = Trial.ofToys(folder).run(script);
        assertTrue(answer.startsWith("garden.js:"), answer);
        assertTrue(!answer.contains("secret\"") && !answer.contains(outside.toString()), answer);
    }

    @Test
    void aLinkThatStaysInsideTheFolderCanBeRead() throws IOException {
        Files.writeString(folder.resolve("points.csv"), "x,y");
        Files.createSymbolicLink(folder.resolve("same.csv"), folder.resolve("points.csv"));
        assertEquals("x,y", Trial.ofToys(folder).run("print(readText('same.csv'))"));
    }

    @Test
    void whatIsSpoiltInOneRunIsWholeInTheNext() {
        Trial trial = Trial.ofToys(folder);
        trial.run("Array.from = () => 1; Object.prototype.x = 1; Object.freeze = 1; Function.prototype.call = 1;");
        assertEquals("1 undefined", trial.run("print(Array.from([1])[0] + ' ' + ({}).x)"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "for (;;) {}",
                "for (;;) { try { for (;;) {} } catch (e) {} }",
                "for (;;) { try { for (;;) {} } finally { continue; } }",
                "function f() { try { f() } finally { f() } } f()",
                "garden(rotor('R').done()).only(h => { for (;;) {} })",
                "await new Promise(r => { for (;;) {} })",
                "const step = () => Promise.resolve().then(step); await step()",
                "/^(a|a?)+$/.test('a'.repeat(60) + 'b'); for (;;) {}",
                "[1, 2].sort(() => { for (;;) {} })",
            })
    @Timeout(20)
    void aScriptWithoutEndIsStopped(String script) {
        String answer = Trial.ofToys(folder).run(script, request -> request.withLimit(Duration.ofMillis(500)));
        assertEquals(
                "stopped: the script ran longer than 0.5 s",
                answer.lines().findFirst().orElseThrow().replaceFirst("^garden.js:(\\d+:\\d+: )?\\s*", ""));
    }

    @Test
    void aScriptThatEndsInTimeIsNotStopped() {
        assertEquals("1", Trial.ofToys(folder).run("print(1)", request -> request.withLimit(Duration.ofSeconds(30))));
    }
}
