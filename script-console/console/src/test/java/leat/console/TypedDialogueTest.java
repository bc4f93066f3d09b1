package leat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import leat.script.JavaScriptSession;
import leat.script.SessionRequest;
import org.jline.terminal.Size;
import org.jline.terminal.impl.ExternalTerminal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A person at a terminal, key by key. The terminal has no screen, but all else: lines, signals, an end. */
@Timeout(60)
class TypedDialogueTest {

    private static final String CTRL_C = "\u0003";
    private static final String CTRL_D = "\u0004";
    private static final String CTRL_P = "\u0010"; // the entry before

    private final ByteArrayOutputStream screen = new ByteArrayOutputStream();

    @TempDir
    Path folder;

    private PipedOutputStream keys;
    private ExternalTerminal terminal;
    private Thread console;

    @BeforeEach
    void sitDown() throws IOException {
        keys = new PipedOutputStream();
        terminal = new ExternalTerminal("test", "xterm", new PipedInputStream(keys), screen, StandardCharsets.UTF_8);
        terminal.setSize(Size.of(100, 40));
    }

    @AfterEach
    void leave() throws IOException {
        terminal.close();
    }

    private void start(Optional<Path> history) {
        SessionRequest request = new SessionRequest(folder, new TreeMap<>(), Duration.ZERO);
        TypedDialogue dialogue = new TypedDialogue(terminal, new Screen(), history);
        console = new Thread(() -> dialogue.run(host -> JavaScriptSession.open(request, host), "welcome"));
        console.start();
        await("leat> ", 1);
    }

    private void press(String text) throws IOException {
        keys.write(text.getBytes(StandardCharsets.UTF_8));
        keys.flush();
    }

    private void end() throws IOException, InterruptedException {
        press(CTRL_D);
        console.join(20_000);
        assertFalse(console.isAlive());
    }

    private String seen() {
        return screen.toString(StandardCharsets.UTF_8);
    }

    private void await(String text, int times) {
        while (seen().split(Pattern.quote(text), -1).length - 1 < times) {
            try {
                Thread.sleep(20);
            } catch (InterruptedException tooLong) {
                throw new AssertionError("waited for " + text + " in\n" + seen(), tooLong);
            }
        }
    }

    @Test
    void entriesAreAnswered() throws Exception {
        start(Optional.empty());
        press("let y = 3\r");
        await("y = 3", 2);
        press("let y = feet(\r");
        await("    | ", 1);
        press("  4)\r");
        await("y = 4.0 ft", 1);
        press("fet(1)\r");
        await("! input:1:1: there is no fet here; did you mean feet?", 1);
        press("y\r");
        await("4.0 ft", 2);
        end();
        assertTrue(seen().contains("welcome"));
    }

    @Test
    void tabCompletesANameAndListsSeveral() throws Exception {
        start(Optional.empty());
        press("bubb\t\"B\", at(1, 2)).fam\t\"x\")\r");
        await("a head part", 1);
        press("Pressure.p\t");
        await("ascals", 1); // what was typed already stands out by colour codes
        press("si(3)\r");
        await("3.0 psi", 1);
        end();
    }

    @Test
    void controlCStopsWhatRunsAndDropsWhatIsTyped() throws Exception {
        start(Optional.empty());
        press("let kept = 7\r");
        await("kept = 7", 2);
        press("print('now'); for (;;) {}\r");
        await("now", 2);
        press(CTRL_C);
        await("! input:1:", 1);
        await("stopped", 1);
        press("rubbish(" + CTRL_C);
        press("kept * 6\r");
        await("42", 1);
        end();
    }

    @Test
    void exitLeavesToo() throws Exception {
        start(Optional.empty());
        press("exit\r");
        console.join(20_000);
        assertFalse(console.isAlive());
    }

    @Test
    void helpAloneIsUnderstood() throws Exception {
        start(Optional.empty());
        press("help\r");
        await("Places and shapes", 1);
        end();
    }

    @Test
    void historyIsKeptFromOneTimeToTheNext() throws Exception {
        Path history = folder.resolve("state/leat/history-javascript");
        start(Optional.of(history));
        press("7 * 6\r");
        await("42", 1);
        end();
        assertTrue(Files.readString(history).contains("7 * 6"));
        leave();
        sitDown();
        screen.reset();
        start(Optional.of(history));
        press(CTRL_P + "\r");
        await("42", 1);
        end();
    }

    @Test
    void withoutAHistoryNothingIsKept() throws Exception {
        start(Optional.empty());
        press("7 * 6\r");
        await("42", 1);
        end();
        try (var files = Files.list(folder)) {
            assertEquals(0, files.count());
        }
    }

    /** Writes all on the terminal, as a screen shows it. */
    private final class Screen implements Outlet {

        @Override
        public void result(String text) {
            terminal.writer().println(text);
            terminal.flush();
        }

        @Override
        public void message(String text) {
            result(text);
        }

        @Override
        public void progress(double fraction, String what) {
            // a person would see it come and go
        }

        @Override
        public void clearProgress() {
            // nothing was shown
        }

        @Override
        public void write(SortedMap<String, byte[]> files) {
            result("written: " + files.keySet());
        }

        @Override
        public String red(String text) {
            return text;
        }

        @Override
        public String yellow(String text) {
            return text;
        }
    }
}
