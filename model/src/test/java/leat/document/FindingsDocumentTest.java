package leat.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import leat.model.catalog.Rules;
import leat.model.finding.Finding;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.plan.Yard;
import leat.model.quantity.Area;
import leat.model.quantity.Pressure;
import leat.model.quantity.Ratio;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("pinned")
class FindingsDocumentTest {

    private static final Rules RULES = StandingData.load("leat-1").rules();

    private static final List<Finding> FINDINGS = List.of(
            Finding.of(
                    RULES.get("hydraulics.pressure.least"),
                    Subject.of(new HeadId("S2"), "pressure"),
                    Pressure.psi(17.123456789),
                    "use a larger pipe"),
            Finding.of(
                    RULES.get("coverage.overspray"), Subject.of(new Point(3.048, -1)), new Area(2.5), "turn the arc"),
            Finding.of(RULES.get("coverage.uniformity"), Subject.yard(), Ratio.of(0.48), ""));

    private static final String US = """
            {
              "format": "leat-findings",
              "version": 1,
              "yard": "First lawn",
              "edition": "leat-1",
              "units": "US",
              "summary": {"breach": 2, "caution": 1, "note": 0},
              "findings": [
                {
                  "rule": "hydraulics.pressure.least",
                  "title": "each head has the least pressure of its family",
                  "severity": "breach",
                  "subject": {"kind": "head", "id": "S2", "field": "pressure"},
                  "measured": "17.1235 psi",
                  "side": "at least",
                  "limit": "20.3053 psi",
                  "source": "the head family's own range",
                  "standing": "common practice, no source",
                  "advice": "use a larger pipe"
                },
                {
                  "rule": "coverage.overspray",
                  "title": "no head throws water on paving or a structure",
                  "severity": "breach",
                  "subject": {"kind": "place", "at": ["10 ft", "-3.28084 ft"]},
                  "measured": "26.9098 ft2",
                  "side": "at most",
                  "limit": "0 ft2",
                  "source": "water on paths makes them slippery and runs off",
                  "standing": "common practice, no source",
                  "advice": "turn the arc"
                },
                {
                  "rule": "coverage.uniformity",
                  "title": "the low quarter of a lawn gets its share",
                  "severity": "caution",
                  "subject": {"kind": "yard"},
                  "measured": "48 %",
                  "side": "at least",
                  "limit": "50 %",
                  "source": "audit experience printed in extension bulletins: 0.50 to 0.70 for sprays, 0.60 to 0.80 for rotors",
                  "standing": "common practice, no source",
                  "advice": ""
                }
              ]
            }
            """;

    @Test
    void findingsWithRuleLimitSourceAndSubject() {
        Yard yard = FirstLawn.yardInFeet();
        assertEquals(US, FindingsDocument.write(yard, FINDINGS));
        assertEquals(US, FindingsDocument.write(yard, FINDINGS));
    }

    @Test
    void figuresFollowTheYardsUnits() {
        String text = FindingsDocument.write(FirstLawn.yardInMetres(), FINDINGS.subList(0, 1));
        assertEquals(true, text.contains("\"measured\": \"118.062 kPa\""), text);
        assertEquals(true, text.contains("\"limit\": \"140 kPa\""), text);
    }

    @Test
    void nothingFound() {
        assertEquals("""
                {
                  "format": "leat-findings",
                  "version": 1,
                  "yard": "First lawn",
                  "edition": "leat-1",
                  "units": "US",
                  "summary": {"breach": 0, "caution": 0, "note": 0},
                  "findings": []
                }
                """, FindingsDocument.write(FirstLawn.yardInFeet(), List.of()));
    }
}
