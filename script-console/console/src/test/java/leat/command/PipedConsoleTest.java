package leat.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The console at the end of a pipe: no prompt, results and messages apart, the exit codes of a script. */
class PipedConsoleTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final CommandLine leat =
            Leat.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    private final InputStream before = System.in;

    @TempDir
    Path folder;

    @AfterEach
    void giveBackTheInput() {
        System.setIn(before);
    }

    private int pipe(String input, String... options) {
        System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
        List<String> arguments =
                new ArrayList<>(List.of("console", "--folder", folder.toString(), "--out", out().toString()));
        arguments.addAll(List.of(options));
        return leat.execute(arguments.toArray(String[]::new));
    }

    private Path out() {
        return folder.resolve("out");
    }

    @Test
    void resultsAppearAndNothingElse() {
        assertEquals(0, pipe("let x = 3\n\nx + 1\nprint('a',\n  x)\n// nothing\n"), err.toString());
        assertEquals("x = 3\n4\na 3\n", out.toString());
        assertEquals("", err.toString());
    }

    @Test
    void aLineThatStartsWithADotGoesOn() {
        assertEquals(0, pipe("const s = [3, 1, 2]\n  .map(x => x + 1)\n  .sort()\ns.length"), err.toString());
        assertEquals("s = [2, 3, 4]\n3\n", out.toString());
    }

    @Test
    void theFirstMistakeEndsItAndItsLineIsThatOfTheInput() {
        assertEquals(3, pipe("print(1)\n\nprint(\n  fet(2))\nprint(3)\n"));
        assertEquals("1\n", out.toString());
        assertEquals("""
                leat: input:4:3: there is no fet here; did you mean feet?
                    fet(2))
                    ^
                """, err.toString());
    }

    @Test
    void inputThatEndsTooEarlyIsAMistake() {
        assertEquals(3, pipe("yard('x').with(\n"));
        assertTrue(err.toString().startsWith("leat: input:2:1: expected an operand but found eof"), err.toString());
    }

    @Test
    void javaWorksTheSame() {
        assertEquals(3, pipe("var x = 3;\nint f(int y) {\n  return x + y;\n}\nf(1)\nfet(2)\nprint(3)", "--java"));
        assertEquals("x = 3\n4\n", out.toString());
        assertTrue(
                err.toString().startsWith("leat: input:6:1: there is no fet here; did you mean feet?"), err.toString());
    }

    @Test
    void settingsAndTimesAreThoseOfAScript() {
        assertEquals(3, pipe("param('rows', 2)\nfor (;;) {}", "--set", "rows=4", "--timeout", "0.5"));
        assertEquals("4\n", out.toString());
        assertTrue(err.toString().contains("input:2:1: stopped: the script ran longer than 0.5 s"), err.toString());
    }

    @Test
    void aFolderThatIsNotThereIsWrongInput() {
        assertEquals(
                2, leat.execute("console", "--folder", folder.resolve("none").toString()));
        assertTrue(err.toString().startsWith("leat: there is no folder"), err.toString());
    }

    private static final String YARD = """
            let y = yard("Plot").with(
              lawn("lawn", rectangle(at(0, 0), feet(15), feet(15))).soil("loam"),
              mains("street", at(-8, -8)).staticPressure(psi(%d)).flowTest(gpm(15), psi(%d)),
              pipe("main", polyline(at(-8, -8), at(-3, -3))).from("street").series("PVC Schedule 40").size("3/4 in"),
              backflow("garden").on("main").device("bfp-pvb-3_4").height(inches(18)),
              manifold("box", at(-3, -3)).on("main").valves("V1").device("valve-3_4"))
            let p = plan(y, heads("spray-4_6"))
            """;

    @Test
    void reportsAreWrittenAtOnceAndMayBeRepeated() {
        assertEquals(0, pipe(YARD.formatted(60, 50) + "report(p)\nreport(p)\nreport(p, 'again')"), err.toString());
        assertTrue(Files.exists(out().resolve("report.html")));
        assertTrue(Files.exists(out().resolve("again/report.html")));
        assertEquals(3, err.toString().split("written to ").length - 1, err.toString());
    }

    @Test
    void whatWasReportedBeforeAMistakeStays() {
        assertEquals(3, pipe(YARD.formatted(60, 50) + "report(p); fail()"));
        assertTrue(Files.exists(out().resolve("report.html")));
    }

    @Test
    void aBreachInTheYardAssessedLastGivesOne() {
        assertEquals(1, pipe(YARD.formatted(20, 8) + "assess(p)"), err.toString());
        assertTrue(out.toString().contains("\nbreach "), out.toString());
    }
}
