package leat.script;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Dialogues with the console, word for word. In the tables an entry begins with {@code > }, its further lines with
 * {@code | }; what follows is the answer.
 */
@Tag("pinned")
class SessionDialogueTest {

    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicTest> inJavaScript() throws IOException {
        return tests("session.txt", () -> SessionTrial.inJavaScript(folder));
    }

    @TestFactory
    Stream<DynamicTest> inJava() throws IOException {
        return tests("session-java.txt", () -> SessionTrial.inJava(folder));
    }

    private static Stream<DynamicTest> tests(String tableName, Supplier<SessionTrial> opener) throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (String dialogue : table(tableName).split("(?m)^### ")) {
            if (!dialogue.isBlank()) {
                String title = dialogue.substring(0, dialogue.indexOf('\n'));
                String expected = dialogue.substring(title.length()).strip();
                tests.add(DynamicTest.dynamicTest(
                        title,
                        () -> assertEquals(expected, played(expected, opener).strip())));
            }
        }
        return tests.stream();
    }

    /** The dialogue with the answers that the console really gives. */
    private static String played(String dialogue, Supplier<SessionTrial> opener) {
        StringBuilder played = new StringBuilder();
        try (SessionTrial console = opener.get()) {
            for (String turn : dialogue.split("(?m)^> ")) {
                if (turn.isEmpty()) {
                    continue;
                }
                List<String> entry = new ArrayList<>();
                turn.lines()
                        .takeWhile(line -> entry.isEmpty() || line.startsWith("| "))
                        .forEach(line -> entry.add(entry.isEmpty() ? line : line.substring(2)));
                played.append("> ").append(String.join("\n| ", entry)).append('\n');
                String answer = console.type(String.join("\n", entry));
                played.append(answer.isEmpty() ? "" : answer + "\n");
            }
        }
        return played.toString();
    }

    private static String table(String name) throws IOException {
        try (var table = SessionDialogueTest.class.getResourceAsStream(name)) {
            return new String(table.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
