package leat.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class LeatTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final CommandLine leat =
            new CommandLine(new Leat()).setOut(new PrintWriter(out)).setErr(new PrintWriter(err));

    @Test
    void helpGoesToStandardOutput() {
        assertEquals(0, leat.execute("--help"));
        assertTrue(out.toString().startsWith("Usage: leat"), out.toString());
        assertEquals("", err.toString());
    }

    @Test
    void withoutACommandItIsWrongUsage() {
        assertEquals(2, leat.execute());
        assertTrue(err.toString().startsWith("say what to do"), err.toString());
        assertEquals("", out.toString());
    }
}
