package leat.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The guide shows real scripts and real output: what stands under {@code js NAME} is saved and run, and each line under
 * {@code text NAME} is the beginning of a line that the program gives, in that order.
 */
class GuideTest {

    private static final Pattern BLOCK = Pattern.compile("(?ms)^```(js|text) ([^\\n]+)\\n(.*?)^```$");

    @ParameterizedTest
    @ValueSource(strings = {"README.md", "docs/guide/first-plan.md"})
    void outputIsReal(String page, @TempDir Path folder) throws Exception {
        List<MatchResult> blocks = BLOCK.matcher(Pages.read(page)).results().toList();
        assertFalse(blocks.isEmpty());
        for (MatchResult block : blocks) {
            if (block.group(1).equals("js")) {
                Files.writeString(folder.resolve(block.group(2)), block.group(3));
            }
        }
        for (MatchResult block : blocks) {
            if (block.group(1).equals("text")) {
                List<String> given = run(folder, block.group(2).split(" "));
                assertTrue(
                        missing(block.group(3), given).isEmpty(),
                        () -> missing(block.group(3), given) + "\nin\n" + String.join("\n", given));
            }
        }
    }

    /**
     * What stands under {@code console} or {@code java-console} is a dialogue: entries after {@code leat> }, their further
     * lines after {@code | }, and the answers. All entries of a page go through one console.
     */
    @ParameterizedTest
    @ValueSource(strings = {"console", "java-console"})
    void dialoguesAreReal(String kind, @TempDir Path folder) throws Exception {
        Pattern block = Pattern.compile("(?ms)^```" + kind + "\\n(.*?)^```$");
        List<String> typed = new ArrayList<>();
        List<String> answers = new ArrayList<>();
        block.matcher(Pages.read("docs/guide/console.md"))
                .results()
                .flatMap(found -> found.group(1).lines())
                .forEach(line -> {
                    boolean entry = line.startsWith("leat> ") || line.startsWith("    | ");
                    (entry ? typed : answers).add(entry ? line.substring("leat> ".length()) : line);
                });
        assertFalse(typed.isEmpty());
        Path input = Files.write(folder.resolve("entries.txt"), typed);
        List<String> given = console(folder, input, kind.startsWith("java") ? List.of("--java") : List.of());
        assertEquals(String.join("\n", answers), String.join("\n", given));
    }

    /** Runs the console on a file of entries. */
    private static List<String> console(Path folder, Path input, List<String> options)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "leat.command.Leat",
                "console",
                "--out",
                folder.resolve("out").toString()));
        command.addAll(options);
        Path output = folder.resolve("output.txt");
        Process process = new ProcessBuilder(command)
                .redirectInput(input.toFile())
                .redirectOutput(output.toFile())
                .redirectError(folder.resolve("messages.txt").toFile())
                .start();
        int code = process.waitFor();
        assertTrue(
                code <= 1,
                () -> code + " " + Pages.read(folder.resolve("messages.txt").toString()));
        return Files.readString(output, StandardCharsets.UTF_8).lines().toList();
    }

    /** The README says that the script stands there whole. */
    @Test
    void theFirstScriptOfTheReadmeIsTheExample() {
        MatchResult script =
                BLOCK.matcher(Pages.read("README.md")).results().findFirst().orElseThrow();
        assertEquals(Pages.read("examples/side-lawn/side-lawn.js"), script.group(3));
    }

    @Test
    void linesAreLookedForInTheirOrder() {
        assertEquals(List.of(), missing("a\n…\nc\n", List.of("a 1", "b", "c")));
        assertEquals(List.of("a"), missing("b\na\n", List.of("a", "b")));
    }

    /** The expected lines that do not come, in their order, among the given ones. */
    private static List<String> missing(String expected, List<String> given) {
        List<String> missing = new ArrayList<>();
        int next = 0;
        for (String line : expected.lines().filter(one -> !one.equals("…")).toList()) {
            int at = next;
            while (at < given.size() && !given.get(at).startsWith(line)) {
                at++;
            }
            if (at == given.size()) {
                missing.add(line);
            } else {
                next = at + 1;
            }
        }
        return missing;
    }

    /** Runs the program on a script of the guide or of the project. */
    private static List<String> run(Path folder, String... scriptAndOptions) throws IOException, InterruptedException {
        Path own = folder.resolve(scriptAndOptions[0]);
        Path script = Files.exists(own) ? own : Pages.root().resolve(scriptAndOptions[0]);
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "leat.command.Leat",
                "run",
                script.toString(),
                "--out",
                folder.resolve("out").toString()));
        command.addAll(List.of(scriptAndOptions).subList(1, scriptAndOptions.length));
        Path output = folder.resolve("output.txt");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        assertTrue(process.waitFor() <= 1, () -> command.toString());
        return Files.readString(output, StandardCharsets.UTF_8).lines().toList();
    }
}
