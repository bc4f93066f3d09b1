package leat.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The command line as a user meets it: what is typed, the exit code, what appears where. */
class LeatTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final CommandLine leat =
            Leat.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err));

    @TempDir
    Path folder;

    private int run(String script, String... options) throws IOException {
        Path file = Files.writeString(folder.resolve("garden.js"), script);
        String[] arguments = new String[options.length + 2];
        arguments[0] = "run";
        arguments[1] = file.toString();
        System.arraycopy(options, 0, arguments, 2, options.length);
        return leat.execute(arguments);
    }

    private String messages() {
        return err.toString().replace(folder + "/", "").strip();
    }

    @Test
    void helpGoesToStandardOutput() {
        assertEquals(0, leat.execute("--help"));
        assertTrue(out.toString().startsWith("Usage: leat"), out.toString());
        assertEquals("", err.toString());
    }

    @Test
    void everyCommandHasHelp() {
        for (String command : leat.getSubcommands().keySet()) {
            assertEquals(0, leat.execute(command, "--help"));
        }
        assertEquals("", err.toString());
    }

    @Test
    void withoutACommandItIsWrongUsage() {
        assertEquals(2, leat.execute());
        assertEquals("leat: say what to do\nFor help: leat --help", messages());
        assertEquals("", out.toString());
    }

    @Test
    void anUnknownOptionIsWrongUsage() throws IOException {
        assertEquals(2, run("print(1)", "--timout", "3"));
        assertEquals(
                "leat: there is no option --timout; did you mean --timeout?\nFor help: leat run --help", messages());
        assertEquals("", out.toString());
    }

    @Test
    void anUnknownCommandIsWrongUsage() {
        assertEquals(2, leat.execute("rum", "garden.js"));
        assertEquals("leat: there is no command rum; did you mean run?\nFor help: leat --help", messages());
    }

    @Test
    void aTimeThatIsNoTimeIsWrongUsage() throws IOException {
        assertEquals(2, run("print(1)", "--timeout", "-3"));
        assertEquals("leat: --timeout: time is -3.0 s; it must be 0.001 to 1,000,000 s", messages());
    }

    @Test
    void whatAScriptPrintsIsAResult() throws IOException {
        assertEquals(0, run("print('one', feet(2))"));
        assertEquals("one 2.0 ft\n", out.toString());
        assertEquals("", messages());
    }

    @Test
    void aScriptThatIsNotThereIsWrongInput() {
        assertEquals(2, leat.execute("run", folder.resolve("gardn.js").toString()));
        assertTrue(messages().startsWith("leat: there is no file gardn.js"), messages());
    }

    @Test
    void aScriptInNoFolderIsWrongInput() {
        assertEquals(2, leat.execute("run", folder.resolve("none/garden.js").toString()));
        assertEquals("leat: there is no folder none", messages());
    }

    @Test
    void aMistakeInAScriptIsShownWithItsPlace() throws IOException {
        assertEquals(3, run("print(1);\nprint(fet(2));"));
        assertEquals("1\n", out.toString());
        assertEquals("""
                leat: garden.js:2:7: there is no fet here; did you mean feet?
                  print(fet(2));
                        ^""", messages());
    }

    @Test
    void debugShowsWhereAFailureCameFrom() throws IOException {
        assertEquals(3, run("fet(2)", "--debug"));
        assertTrue(messages().contains("\tat leat.script."), messages());
    }

    @Test
    void settingsReachTheScript() throws IOException {
        assertEquals(0, run("print(param('rows', 2) + 1, param('name', 'x'))", "--set", "rows=4", "--set", "name=y z"));
        assertEquals("5 y z\n", out.toString());
    }

    @Test
    void aSettingThatTheScriptDoesNotHaveIsWrongUsage() throws IOException {
        assertEquals(2, run("param('rows', 2)", "--set", "row=4"));
        assertEquals("leat: --set row: the script has no such parameter; did you mean rows?", messages());
    }

    @Test
    void aSettingOfTheWrongKindPointsAtTheParameter() throws IOException {
        assertEquals(3, run("param('rows', 2)", "--set", "rows=many"));
        assertTrue(
                messages().startsWith("leat: garden.js:1:1: --set rows=many: this parameter is a number"), messages());
    }

    @Test
    void aScriptThatTakesTooLongIsStopped() throws IOException {
        assertEquals(3, run("while (true) {}", "--timeout", "0.2"));
        assertTrue(messages().startsWith("leat: garden.js:1:1: stopped: the script ran longer than 0.2 s"), messages());
    }

    private static final String PLOT = """
            const y = yard("Plot").with(
              lawn("lawn", rectangle(at(0, 0), feet(15), feet(15))).soil("loam"),
              mains("street", at(-8, -8)).staticPressure(psi(%d)).flowTest(gpm(15), psi(%d)),
              pipe("main", polyline(at(-8, -8), at(-3, -3))).from("street").series("PVC Schedule 40").size("3/4 in"),
              backflow("garden").on("main").device("bfp-pvb-3_4").height(inches(18)),
              manifold("box", at(-3, -3)).on("main").valves("V1").device("valve-3_4"));
            const p = plan(y, heads("spray-4_6"));
            report(p);
            """;

    private Path out() {
        return folder.resolve("out");
    }

    @Test
    void aPlanThatCanBeBuiltIsReported() throws IOException {
        assertEquals(0, run(PLOT.formatted(60, 50), "--out", out().toString()), messages());
        assertTrue(
                out.toString().startsWith("Plot: 1 zone, 4 heads, 0 hose bibs\n  zone zone-1: 4 heads, "),
                out.toString());
        for (String name : List.of("report.html", "plan.svg", "heads.csv", "plan.yard.json")) {
            assertTrue(Files.size(out().resolve(name)) > 0, name);
        }
        assertTrue(messages().contains("written to out: "), messages());
    }

    @Test
    void aPlanWithABreachGivesOne() throws IOException {
        assertEquals(1, run(PLOT.formatted(20, 8), "--out", out().toString()), out + messages());
        assertTrue(out.toString().contains("\n  breach: "), out.toString());
    }

    @Test
    void aDocumentIsAssessedAsItsScriptWas() throws IOException {
        assertEquals(1, run(PLOT.formatted(20, 8), "--out", out().toString()));
        String first = out.toString();
        out.getBuffer().setLength(0);
        String document = out().resolve("plan.yard.json").toString();
        assertEquals(1, leat.execute("assess", document));
        assertEquals(first, out.toString());
    }

    /** A figure is explained on the command line, and a wrong name is answered with the right ones, in all three ways in. */
    @Test
    void figuresAreExplained() throws IOException {
        assertEquals(0, run(PLOT.formatted(60, 50), "--out", out().toString()), messages());
        String document = out().resolve("plan.yard.json").toString();
        out.getBuffer().setLength(0);
        assertEquals(0, leat.execute("assess", document, "--why", "main: velocity", "--why", "lawn:reached"));
        assertTrue(out.toString().startsWith("velocity of pipe main\n  drawn by head lawn/1"), out.toString());
        assertTrue(out.toString().contains("\nreached of surface lawn\n  cells whose centre"), out.toString());
        err.getBuffer().setLength(0);
        assertEquals(2, leat.execute("assess", document, "--why", "main: velocty"));
        assertEquals(
                "leat: pipe main: figure is 'velocty'; it must be one of flow, velocity, loss; perhaps 'velocity'",
                messages());
    }

    @Test
    void aWrongFigureInAScriptIsAnsweredWithTheRightOnes() throws IOException {
        String asks = "assess(p).why(\"zone-1\", \"minuts July\");";
        assertEquals(3, run(PLOT.formatted(60, 50) + asks, "--out", out().toString()));
        assertTrue(
                messages().contains("zone-1: figure is 'minuts July'; it must be one of flow, use MONTH,"), messages());
        assertTrue(messages().contains("; perhaps 'minutes July'"), messages());
    }

    @Test
    void aReportOfADocumentIsTheReportOfItsScript() throws IOException {
        assertEquals(0, run(PLOT.formatted(60, 50), "--out", out().toString()));
        Path again = folder.resolve("again");
        assertEquals(0, leat.execute("report", out().resolve("plan.yard.json").toString(), "--out", again.toString()));
        try (var files = Files.list(out())) {
            for (Path file : files.toList()) {
                assertEquals(-1, Files.mismatch(file, again.resolve(file.getFileName())), file.toString());
            }
        }
    }

    @Test
    void withJsonTheResultIsJsonAndNothingElse() throws IOException {
        assertEquals(0, run(PLOT.formatted(60, 50) + "print('by the way');", "--json", "--out", out().toString()));
        assertTrue(out.toString().startsWith("{") && out.toString().endsWith("}\n"), out.toString());
        assertTrue(out.toString().contains("\"leat-findings\""), out.toString());
        assertTrue(messages().contains("by the way"), messages());
    }

    @Test
    void aScriptThatFailsAfterItsReportWritesNothing() throws IOException {
        assertEquals(3, run(PLOT.formatted(60, 50) + "fail();", "--out", out().toString()));
        assertFalse(Files.exists(out()));
    }

    @Test
    void twoReportsNeedFoldersOfTheirOwn() throws IOException {
        assertEquals(0, run(PLOT.formatted(60, 50) + "report(y, 'as found');", "--out", out().toString()), messages());
        assertTrue(Files.exists(out().resolve("as found/report.html")));
        assertEquals(3, run(PLOT.formatted(60, 50) + "report(y);", "--out", out().toString()));
        assertTrue(messages().contains("a report was made there already"), messages());
        assertEquals(3, run(PLOT.formatted(60, 50) + "report(y, '../x');", "--out", out().toString()));
        assertTrue(messages().contains("the folder of a report must be letters"), messages());
    }

    @Test
    void aDocumentThatIsNoneIsWrongInput() throws IOException {
        Path file = Files.writeString(folder.resolve("bad.yard.json"), "{\"format\": \"leat-yard\", ");
        assertEquals(2, leat.execute("assess", file.toString()));
        assertTrue(messages().startsWith("leat: bad.yard.json, line 1"), messages());
        assertEquals("", out.toString());
    }
}
