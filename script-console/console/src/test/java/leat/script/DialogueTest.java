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

/**
 * Scripts and, word for word, what comes of them. The table dialogue.txt tries the way scripts meet values, with a small
 * vocabulary of its own; words.txt tries the words of Leat.
 */
@Tag("pinned")
class DialogueTest {

    private static final String TITLE = "### ";
    private static final String ANSWER = "\n---\n";

    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicTest> valuesAndMistakes() throws IOException {
        Files.writeString(
                folder.resolve("lib.js"),
                "export const side = feet(3);\nexport function fail() { return side.metre(); }\n");
        Files.writeString(folder.resolve("broken.js"), "export const side = ;\n");
        return tests("dialogue.txt", Trial.ofToys(folder));
    }

    @TestFactory
    Stream<DynamicTest> theWordsOfLeat() throws IOException {
        Files.writeString(
                folder.resolve("areas.csv"),
                "# walked\nname,east (ft),north (m)\nfront,0,0\nfront,10,0\nfront,10,5\nback,1,1\n");
        Files.writeString(folder.resolve("levels.csv"), "level (in),east (ft),north (ft)\n4,0,0\n\"5\",10,0\n6,0,10\n");
        Files.writeString(folder.resolve("bare.csv"), "east,north,level\n1,2,3\n");
        Files.writeString(folder.resolve("broken.csv"), "east (ft),north (ft),level (ft)\n1,2,3\n1,2,three\n");
        return tests("words.txt", Trial.ofLeat(folder));
    }

    private static Stream<DynamicTest> tests(String tableName, Trial trial) throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (String entry : table(tableName).split("(?m)^" + TITLE)) {
            if (!entry.isBlank()) {
                int answer = entry.indexOf(ANSWER);
                String title = entry.substring(0, entry.indexOf('\n'));
                String script = entry.substring(entry.indexOf('\n') + 1, answer + 1);
                String expected = entry.substring(answer + ANSWER.length()).strip();
                tests.add(DynamicTest.dynamicTest(
                        title, () -> assertEquals(expected, trial.run(script).strip())));
            }
        }
        return tests.stream();
    }

    private static String table(String name) throws IOException {
        try (var table = DialogueTest.class.getResourceAsStream(name)) {
            return new String(table.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
