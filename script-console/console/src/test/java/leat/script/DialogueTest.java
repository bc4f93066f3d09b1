package leat.script;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Scripts and, word for word, what comes of them; the table is dialogue.txt. */
@Tag("pinned")
class DialogueTest {

    private static final String TITLE = "### ";
    private static final String ANSWER = "\n---\n";

    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicTest> dialogue() throws IOException {
        Files.writeString(folder.resolve("lib.js"), "export const side = feet(3);\nexport function fail() { return side.metre(); }\n");
        Files.writeString(folder.resolve("broken.js"), "export const side = ;\n");
        List<DynamicTest> tests = new ArrayList<>();
        for (String entry : table().split("(?m)^" + TITLE)) {
            if (!entry.isBlank()) {
                int answer = entry.indexOf(ANSWER);
                String title = entry.substring(0, entry.indexOf('\n'));
                String script = entry.substring(entry.indexOf('\n') + 1, answer + 1);
                String expected = entry.substring(answer + ANSWER.length()).strip();
                tests.add(DynamicTest.dynamicTest(title, () -> assertEquals(expected, new Trial(folder).run(script).strip())));
            }
        }
        return tests.stream();
    }

    private static String table() throws IOException {
        try (var table = DialogueTest.class.getResourceAsStream("dialogue.txt")) {
            return new String(table.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
