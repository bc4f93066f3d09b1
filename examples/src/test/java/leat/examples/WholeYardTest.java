package leat.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("pinned")
class WholeYardTest {

    @Test
    void plansAndAssessesWaterAndPower() {
        var bytes = new ByteArrayOutputStream();
        WholeYard.run(new PrintStream(bytes, false, StandardCharsets.UTF_8));
        assertEquals(
                List.of(
                        "heads: 10, zones: 1",
                        "trenches: 192.1 ft, 8.02 yd3",
                        "circuit garden: 7.1 A of 20.0 A",
                        "materials: 50 lines",
                        "stakes: 30",
                        "busiest day: 67 min",
                        "may be built as planned: yes, where local codes agree"),
                bytes.toString(StandardCharsets.UTF_8).lines().toList());
    }
}
