package leat.calc.trenching;

import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.existingService;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.inches;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.noDig;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.pond;
import static leat.model.plan.Parts.psi;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.setback;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.traverse;
import static leat.model.plan.Parts.tree;
import static leat.model.plan.Parts.trench;
import static leat.model.plan.Parts.yard;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leat.calc.Progress;
import leat.document.StandingData;
import leat.model.finding.Finding;
import leat.model.finding.Subject;
import leat.model.plan.Part;
import leat.model.plan.TrenchPart;
import leat.model.plan.Yard;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Quantity;
import leat.model.site.ExistingService;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A lot of 100 feet square with a pipe across it. Expected lengths: plane geometry, by hand. */
@Tag("reference")
class TrenchReviewTest {

    @Test
    void trenchThroughNoDigGroundIsMeasuredWithItsDoubt() {
        Finding finding = only(
                straight(),
                noDig("well", rectangle(at(20, 40), feet(10), feet(20))).doubt(feet(1)));
        expect("trench.no-dig", feet(12), finding);
    }

    @Test
    void trenchThroughAStructureIsMeasured() {
        expect(
                "trench.obstacle",
                feet(8),
                only(straight(), structure("shed", rectangle(at(30, 46), feet(8), feet(8)))));
    }

    /** Each thing that lies across is named, with the middle of the way through it. */
    @Test
    void eachBarrierHasItsOwnFindingWithNameAndPlace() {
        List<Finding> found = findings(
                straight(),
                structure("shed", rectangle(at(30, 46), feet(8), feet(8))),
                pond("pool", rectangle(at(60, 40), feet(6), feet(20))),
                setback("line", polyline(at(50, 0), at(50, 100))));
        assertEquals(
                List.of(
                        "trench segment T, through surface pool at 63, 50",
                        "trench segment T, through surface shed at 34, 50",
                        "trench segment T, across limit line line at 50, 50"),
                found.stream()
                        .map(one -> (Subject.Thing) one.subject())
                        .map(thing -> thing + " at "
                                + Math.round(thing.at().orElseThrow().east().inFeet()) + ", "
                                + Math.round(thing.at().orElseThrow().north().inFeet()))
                        .toList());
        assertEquals(6, ((Length) found.get(0).measured()).inFeet(), 1e-6);
        assertTrue(found.stream().noneMatch(one -> one.advice().isEmpty()));
    }

    /** Root zone: twelve times the trunk's diameter as radius, so 24 times 6 in across; common practice, no source. */
    @Test
    void trenchThroughRootsByMachineIsReportedAndByHandIsNot() {
        Finding finding = only(straight(), tree("oak", at(50, 53), inches(6)));
        assertEquals("trench.roots", finding.rule().id());
        double chordFt = 2 * Math.sqrt(36 - 9);
        // The zone is drawn as a polygon of 16 corners around the circle: a little more than the circle.
        assertEquals(chordFt, ((Length) finding.measured()).inFeet(), 0.3);
        assertEquals(List.of(), findings(straight().byHand(), tree("oak", at(50, 53), inches(6))));
    }

    /** By machine it is a caution; the box at its end stands as near, and all of the trench is to be dug by hand. */
    @Test
    void trenchNearALineInTheGroundIsReportedWithWhatTheDoubtLeaves() {
        List<Finding> found = findings(
                straight(),
                existingService("gas", ExistingService.Kind.GAS, polyline(at(0, 52), at(100, 52)))
                        .doubt(feet(1)));
        assertEquals(3, found.size(), found.toString());
        expect("trench.service", feet(1), found.get(0));
        expect("trench.hole", feet(1), found.get(1));
        assertEquals(
                "manifold box, near existing service gas",
                found.get(1).subject().toString());
        expect("trench.by-hand", feet(90), found.get(2));
        assertTrue(found.get(2).advice().endsWith("by hand in T"), found.get(2).advice());
    }

    /** A line across: 18 in and 1 ft of doubt on each side are dug by hand, which a trench by hand does. */
    @Test
    void whatCrossesALineIsDugByHandThere() {
        List<Finding> found = findings(
                straight().byHand(),
                existingService("gas", ExistingService.Kind.GAS, polyline(at(50, 0), at(50, 100)))
                        .doubt(feet(1)));
        assertEquals(1, found.size(), found.toString());
        expect("trench.by-hand", feet(5), found.get(0));
    }

    @Test
    void trenchThatCrossesASetbackIsCounted() {
        expect("trench.limit-line", Count.of(1), only(straight(), setback("line", polyline(at(50, 0), at(50, 100)))));
    }

    @Test
    void trenchOutsideTheLotIsMeasured() {
        Finding finding = only(trench("T", polyline(at(5, 50), at(110, 50), at(95, 50)))
                .depth(inches(24))
                .holds("main"));
        assertEquals("trench.lot", finding.rule().id());
        assertEquals(20, ((Length) finding.measured()).inFeet(), 0.01);
    }

    /** Cover: 22 in less the outside diameter of 1 in Schedule 40, 1.315 in (ASTM D1785, from memory), less 18 in wanted. */
    @Test
    void coverIsFromFinishedGradeToTheTopOfThePipe() {
        assertEquals(List.of(), findings(straight().depth(inches(19.4))));
        Finding finding = only(straight().depth(inches(19)));
        assertEquals("trench.cover.main", finding.rule().id());
        assertEquals(19 - 1.315, ((Length) finding.measured()).inInches(), 0.002);
    }

    @Test
    void pipeWithoutATrenchIsNoted() {
        Finding finding = only(
                trench("T", polyline(at(5, 50), at(35, 50))).depth(inches(24)).holds("main"));
        expect("trench.missing", feet(60), finding);
    }

    private static TrenchPart straight() {
        return trench("T", polyline(at(5, 50), at(95, 50))).depth(inches(24)).holds("main");
    }

    private static void expect(String rule, Quantity measured, Finding finding) {
        assertEquals(rule, finding.rule().id());
        assertEquals(measured.si(), finding.measured().si(), 1e-6);
    }

    private static Finding only(Part trench, Part... more) {
        List<Finding> findings = findings(trench, more);
        assertEquals(1, findings.size(), findings.toString());
        return findings.get(0);
    }

    private static List<Finding> findings(Part trench, Part... more) {
        List<Part> parts = new ArrayList<>(List.of(
                traverse(at(0, 0))
                        .go("N 0° E", feet(100))
                        .go("N 90° E", feet(100))
                        .go("S 0° E", feet(100))
                        .close(),
                mains("street", at(5, 50)).staticPressure(psi(60)),
                pipe("main", polyline(at(5, 50), at(95, 50)))
                        .from("street")
                        .series("PVC Schedule 40")
                        .size("1 in"),
                manifold("box", at(95, 50)).on("main"),
                trench));
        parts.addAll(List.of(more));
        Yard yard = yard("Square").with(parts.toArray(Part[]::new));
        return TrenchReview.run(
                        StandingData.load(Yard.EDITION).siteOf(yard), TrenchReviewParameters.defaults(), Progress.NONE)
                .findings();
    }
}
