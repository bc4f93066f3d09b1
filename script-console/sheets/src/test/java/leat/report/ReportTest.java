package leat.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.finding.Citation;
import leat.model.finding.Finding;
import leat.model.finding.Limit;
import leat.model.finding.Rule;
import leat.model.finding.Severity;
import leat.model.finding.Standing;
import leat.model.finding.Subject;
import leat.model.id.HeadId;
import leat.model.quantity.Pressure;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("law")
class ReportTest {

    private static Figures figures() {
        Rule rule = new Rule(
                "hydraulics.pressure.least",
                "each head has the least pressure of its family",
                Limit.AT_LEAST,
                Pressure.psi(20),
                Severity.BREACH,
                new Citation("the head family's own range", Standing.COMMON_PRACTICE));
        Finding finding = Finding.of(rule, Subject.of(new HeadId("R7")), Pressure.psi(17), "use the next size of pipe");
        return new Figures(new TreeMap<>(), List.of(finding)).with(new HeadId("R7"), Figures.PRESSURE, Pressure.psi(17));
    }

    @Test
    void theSamePlanGivesTheSameBytes() throws Exception {
        SortedMap<String, byte[]> once = Report.files(TernHill.yardByHand(), figures());
        SortedMap<String, byte[]> again = Report.files(TernHill.yardByHand(), figures());
        assertEquals(once.keySet(), again.keySet());
        for (String name : once.keySet()) {
            assertArrayEquals(once.get(name), again.get(name), name);
            Files.write(Path.of("target", name), once.get(name));
        }
    }
}
