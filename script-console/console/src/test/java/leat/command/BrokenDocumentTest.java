package leat.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.document.YardDocument;
import leat.model.plan.Parts;
import leat.model.plan.Yard;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A document with one fault, given to the command line: code 2, one message with its place, nothing written. */
@Tag("law")
class BrokenDocumentTest {

    private static final String GOOD = YardDocument.write(yard());

    @TempDir
    Path folder;

    private static Yard yard() {
        String series = "PVC Schedule 40";
        return Parts.yard("Plot")
                .with(
                        Parts.lawn("lawn", Parts.rectangle(Parts.at(0, 0), Parts.feet(15), Parts.feet(16))),
                        Parts.mains("street", Parts.at(0, 0)).staticPressure(Parts.psi(60)),
                        Parts.pipe("main", Parts.polyline(Parts.at(0, 0), Parts.at(5, 0)))
                                .from("street")
                                .series(series)
                                .size("1 in"),
                        Parts.manifold("box", Parts.at(5, 0)).on("main").valves("V1"),
                        Parts.spray("S1", Parts.at(5, 9))
                                .family("spray-4_6")
                                .fullCircle()
                                .radius(Parts.feet(14)),
                        Parts.spray("S2", Parts.at(9, 9))
                                .family("spray-4_6")
                                .fullCircle()
                                .radius(Parts.feet(13)),
                        Parts.zone("Z1").valve("V1").heads("S1", "S2"),
                        Parts.pipe("L1", Parts.polyline(Parts.at(5, 0), Parts.at(5, 9)))
                                .from("V1")
                                .to("S1")
                                .series(series)
                                .size("3/4 in"),
                        Parts.pipe("L2", Parts.polyline(Parts.at(5, 9), Parts.at(9, 9)))
                                .from("L1")
                                .to("S2")
                                .series(series)
                                .size("3/4 in"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            unknown field        | "radius": "14 ft"                | "radiuss": "14 ft"                 | radius
            wrong unit           | "14 ft"                          | "14 psi"                           | psi
            negative length      | "14 ft"                          | "-14 ft"                           | more than 0
            not a number         | "14 ft"                          | NaN                                | line
            self-crossing        | ["15 ft", "0 ft"], ["15 ft", "16 ft"] | ["15 ft", "16 ft"], ["15 ft", "0 ft"] | side
            dangling id          | "heads": ["S1", "S2"]            | "heads": ["S1", "S7"]              | S7
            duplicate id         | "id": "S2"                       | "id": "S1"                         | S1
            loop in a lateral    | "from": {"valve": "V1"}          | "from": {"pipe": "L2"}             | loop
            unsupported version  | "version": 2                     | "version": 99                      | 99
            """)
    void isRefusedWithItsPlace(String fault, String right, String wrong, String told) throws IOException {
        assertTrue(GOOD.contains(right), () -> right + " is not in\n" + GOOD);
        String broken = GOOD.replaceFirst(Pattern.quote(right), Matcher.quoteReplacement(wrong));
        String message = refused(broken.getBytes(StandardCharsets.UTF_8));
        assertTrue(message.contains(told), message);
        assertTrue(message.contains("line "), message);
    }

    @Test
    void aTruncatedFileIsRefused() throws IOException {
        String message = refused(GOOD.substring(0, GOOD.length() / 2).getBytes(StandardCharsets.UTF_8));
        assertTrue(message.contains("line "), message);
    }

    @Test
    void aBinaryFileIsRefused() throws IOException {
        byte[] bytes = new byte[2_000];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) (i * 37 + 11);
        }
        refused(bytes);
    }

    @Test
    void aDeeplyNestedFileIsRefused() throws IOException {
        refused("[".repeat(100_000).getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void aMissingFileIsRefused() {
        Outcome outcome = execute("assess", folder.resolve("none.yard.json").toString());
        assertEquals(2, outcome.code);
        assertTrue(outcome.err.contains("none.yard.json"), outcome.err);
    }

    private record Outcome(int code, String out, String err) {}

    private Outcome execute(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Leat.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
        return new Outcome(code, out.toString(), err.toString());
    }

    /** The one message; checks that nothing else comes and that nothing is written. */
    private String refused(byte[] document) throws IOException {
        Path file = Files.write(folder.resolve("plot.yard.json"), document);
        Path target = folder.resolve("out");
        Outcome outcome = execute("report", file.toString(), "--out", target.toString());
        assertEquals(2, outcome.code, outcome.err);
        assertEquals("", outcome.out);
        assertEquals(1, outcome.err.lines().count(), outcome.err);
        assertTrue(outcome.err.contains("plot.yard.json"), outcome.err);
        assertFalse(outcome.err.contains("Exception"), outcome.err);
        assertFalse(Files.exists(target));
        return outcome.err;
    }
}
