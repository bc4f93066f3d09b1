package leat.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Scripts in Java at the command line: the flag they need, their mistakes, how they end. */
class JavaRunTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final CommandLine leat =
            Leat.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err));

    @TempDir
    Path folder;

    private int run(String script, String... options) throws IOException {
        Path file = Files.writeString(folder.resolve("Garden.java"), script);
        List<String> arguments = new ArrayList<>(List.of("run", file.toString()));
        arguments.addAll(List.of(options));
        return leat.execute(arguments.toArray(String[]::new));
    }

    private String messages() {
        return err.toString().replace(folder + "/", "").strip();
    }

    @Test
    void javaNeedsTheUsersWord() throws IOException {
        assertEquals(2, run("System.exit(5);"));
        assertEquals(
                "leat: Garden.java is Java, which is not confined: it can read, write and start whatever you can;"
                        + " if you trust it, add --unconfined",
                messages());
        assertEquals("", out.toString());
    }

    @Test
    void aWrongFigureIsAnsweredWithTheRightOnes() throws IOException {
        assertEquals(3, run("""
                var y = yard("Plot").with(lawn("lawn", rectangle(at(0, 0), feet(5), feet(5))));
                assess(y).why("lawn", "low quater");
                """, "--unconfined"));
        assertTrue(
                messages()
                        .contains(
                                "surface lawn: figure is 'low quater'; it must be one of reached, rate, low quarter,"),
                messages());
    }

    @Test
    void whatAScriptPrintsIsAResult() throws IOException {
        assertEquals(0, run("""
                // a comment first
                import java.math.BigDecimal;
                var rows = param("rows", 2);
                int twice(int x) { return 2 * x; }
                print("one", feet(twice(rows)), new BigDecimal("1.50"));
                """, "--unconfined", "--set", "rows=4"), messages());
        assertEquals("one 8.0 ft 1.50\n", out.toString());
    }

    @Test
    void aMistakeIsShownWithItsPlaceAndTheNearestName() throws IOException {
        assertEquals(3, run("print(1);\nvar far =\n    fet(2);", "--unconfined"));
        assertEquals("1\n", out.toString());
        assertEquals("""
                leat: Garden.java:3:5: there is no fet here; did you mean feet?
                      fet(2);
                      ^""", messages());
    }

    @Test
    void whatTheModelRefusesIsShownWhereItWasAskedFor() throws IOException {
        assertEquals(3, run("""
                Yard made(String name) {
                    return yard(name)
                        .with(rotor("R", at(0, 0)));
                }
                made("Plot");
                """, "--unconfined"));
        assertEquals("""
                leat: Garden.java:3:10: head R: missing family and arc and radius
                          .with(rotor("R", at(0, 0)));
                           ^""", messages());
    }

    @Test
    void aPlannersRefusalPointsAtThePlan() throws IOException {
        assertEquals(3, run("var y = yard(\"Plot\");\nvar p = plan(y, heads(\"spry\"));", "--unconfined"));
        assertTrue(messages().startsWith("leat: Garden.java:2:9: head family: key is 'spry'"), messages());
    }

    @Test
    void aMethodThatNeedsWhatNeverComesIsAMistake() throws IOException {
        assertEquals(3, run("int f() { return g(); }\n", "--unconfined"));
        assertTrue(messages().startsWith("leat: Garden.java:1:18: there is no g here"), messages());
    }

    @Test
    void aScriptThatTakesTooLongIsStopped() throws IOException {
        assertEquals(3, run("print(1);\nwhile (true) {}", "--unconfined", "--timeout", "0.5"));
        assertTrue(
                messages().startsWith("leat: Garden.java:2:1: stopped: the script ran longer than 0.5 s"), messages());
    }

    @Test
    void endlessRecursionIsAMistake() throws IOException {
        assertEquals(3, run("int f() { return f() + 1; }\nf();", "--unconfined"));
        assertTrue(messages().contains("functions call each other without end"), messages());
    }

    @Test
    void aSettingThatTheScriptDoesNotHaveIsWrongUsage() throws IOException {
        assertEquals(2, run("print(param(\"rows\", 2));", "--unconfined", "--set", "row=4"));
        assertEquals("leat: --set row: the script has no such parameter; did you mean rows?", messages());
    }

    @Test
    void aFileThatIsNotThereIsWrongInput() {
        assertEquals(2, leat.execute("run", folder.resolve("None.java").toString(), "--unconfined"));
        assertTrue(messages().startsWith("leat: there is no file None.java"), messages());
    }

    private static final String YARD = """
            yard("Plot").with(
              lawn("lawn", rectangle(at(0, 0), feet(15), feet(15))).soil("loam"),
              mains("street", at(-8, -8)).staticPressure(psi(60)).flowTest(gpm(15), psi(50)),
              pipe("main", polyline(at(-8, -8), at(-3, -3))).from("street").series("PVC Schedule 40").size("3/4 in"),
              backflow("garden").on("main").device("bfp-pvb-3_4").height(inches(18)),
              manifold("box", at(-3, -3)).on("main").valves("V1").device("valve-3_4"));
            """;

    /** The same statements in both languages give the same files, byte for byte. */
    @Test
    void theReportIsThatOfTheSameScriptInJavaScript() throws IOException {
        String rest = "var p = plan(y, heads(\"spray-4_6\"));\nreport(p);\nprint(assess(p).why(%s, \"pressure\"));\n";
        Path java = folder.resolve("java");
        Path javaScript = folder.resolve("javascript");
        String why = "p.water().heads().get(0).id()";
        assertEquals(
                0, run("var y = " + YARD + rest.formatted(why), "--unconfined", "--out", java.toString()), messages());
        String printed = out.toString();
        out.getBuffer().setLength(0);
        Path file = Files.writeString(
                folder.resolve("garden.js"), "var y = " + YARD + rest.formatted("p.water().heads()[0].id()"));
        assertEquals(0, leat.execute("run", file.toString(), "--out", javaScript.toString()), messages());
        assertEquals(out.toString(), printed);
        try (var files = Files.list(java)) {
            for (Path each : files.toList()) {
                assertEquals(-1, Files.mismatch(each, javaScript.resolve(each.getFileName())), each.toString());
            }
        }
    }
}
