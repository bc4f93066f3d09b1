package leat.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An entry can be stopped, and the session goes on with the names that it had. */
@Tag("law")
@Timeout(60)
class SessionStopTest {

    private static final Duration SHORT = Duration.ofMillis(500);

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "for (;;) {}",
                "for (;;) { try { for (;;) {} } catch (e) {} }",
                "let y = 4; for (;;) {}",
                "for (;;) { plan(yard('x')) }",
            })
    void namesOutliveAnEntryThatIsStopped(String entry) {
        try (SessionTrial console = SessionTrial.inJavaScript(folder, SHORT)) {
            console.type("var kept = 3");
            assertTrue(console.type(entry).contains("stopped: the script ran longer than 0.5 s"));
            assertEquals("3", console.type("kept"));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "for (;;) {}",
                "while (true) { try { Thread.sleep(5); } catch (InterruptedException e) { } }",
                "for (;;) { plan(yard(\"x\")); }",
            })
    void namesOutliveAnEntryInJavaThatIsStopped(String entry) {
        try (SessionTrial console = SessionTrial.inJava(folder, SHORT)) {
            console.type("var kept = 3;");
            assertTrue(console.type(entry).contains("stopped: the script ran longer than 0.5 s"));
            assertEquals("3", console.type("kept"));
        }
    }

    /** It may catch whatever is thrown at it; then the session is given up for a new one, and says so. */
    @Test
    void anEntryThatResistsCostsTheNames() {
        try (SessionTrial console = SessionTrial.inJavaScript(folder, SHORT)) {
            console.type("var kept = 3");
            String answer = console.type("function f() { try { f() } finally { f() } } f()");
            assertTrue(
                    answer.contains("note: the entry could not be stopped in peace; the session begins anew"), answer);
            assertTrue(answer.contains("stopped: the script ran longer than 0.5 s"), answer);
            assertTrue(console.type("kept").contains("there is no kept here"));
            assertEquals("5", console.type("2 + 3"));
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void anotherThreadMayInterrupt(boolean java) throws InterruptedException {
        try (SessionTrial console = java ? SessionTrial.inJava(folder) : SessionTrial.inJavaScript(folder)) {
            Thread impatient = new Thread(() -> {
                try {
                    Thread.sleep(700);
                } catch (InterruptedException asked) {
                    Thread.currentThread().interrupt();
                }
                console.session().interrupt();
            });
            impatient.start();
            String answer = console.type("for (;;) {}");
            impatient.join();
            assertEquals("input:1:1: stopped", answer.lines().findFirst().orElseThrow());
            assertEquals("5", console.type("2 + 3"));
        }
    }
}
