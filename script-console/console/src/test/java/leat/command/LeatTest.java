package leat.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
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
}
