package leat.calc.digging;

import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.backflow;
import static leat.model.plan.Parts.kilopascals;
import static leat.model.plan.Parts.lawn;
import static leat.model.plan.Parts.level;
import static leat.model.plan.Parts.limit;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.millimetres;
import static leat.model.plan.Parts.paving;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.trench;
import static leat.model.plan.Parts.yard;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leat.calc.Progress;
import leat.document.StandingData;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Ledger;
import leat.model.finding.Severity;
import leat.model.id.PipeId;
import leat.model.id.SegmentId;
import leat.model.plan.Part;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.Volume;
import leat.model.site.SurfaceKind;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Widths, depths and volumes worked out by hand for a lawn 20 m long with a path across. */
@Tag("law")
class DiggingTest {

    private static final double OUTSIDE_M = 0.032;

    private static Site site(Part... more) {
        List<Part> parts = new ArrayList<>(List.of(
                lawn("lawn", rectangle(at(0, 0), metres(20), metres(10))).soil("sandy loam"),
                paving("path", rectangle(at(8, 0), metres(2), metres(10))),
                mains("street", at(0, 5)).staticPressure(kilopascals(400)),
                pipe("main", polyline(at(0, 5), at(20, 5)))
                        .from("street")
                        .series("PE100 SDR 11 (PN 16)")
                        .size("DN/OD 32"),
                pipe("branch", polyline(at(0, 5), at(10, 5)))
                        .from("main")
                        .series("PE100 SDR 11 (PN 16)")
                        .size("DN/OD 32"),
                backflow("garden").on("main").device("bfp-rp-1").height(metres(0.6))));
        parts.addAll(List.of(more));
        return StandingData.load(Yard.EDITION).siteOf(yard("Plot").units(METRIC).with(parts.toArray(Part[]::new)));
    }

    private static DiggingResult run(Site site) {
        return Digging.run(site, DiggingParameters.defaults(), Progress.NONE);
    }

    private static TrenchDig dig(DiggingResult result, String name) {
        return result.trench(new SegmentId(name)).orElseThrow();
    }

    @Test
    void onePipe() {
        DiggingResult result = run(site(
                trench("t", polyline(at(0, 5), at(20, 5))).depth(metres(0.6)).holds("main")));
        TrenchDig dig = dig(result, "t");
        double widthM = OUTSIDE_M + 0.150;
        assertEquals(widthM, dig.width().metres(), 1e-12);
        assertEquals(20, dig.onPlan().metres(), 1e-12);
        assertEquals(20 * widthM * 0.6, dig.bank().cubicMetres(), 1e-12);
        assertEquals(20 * widthM * 0.6 * 1.225, dig.loose().cubicMetres(), 1e-12); // loam swells by 22.5 %
        double pipeM3 = 20 * Math.PI * OUTSIDE_M * OUTSIDE_M / 4;
        double beddingM3 = 20 * widthM * (0.05 + OUTSIDE_M + 0.05) - pipeM3;
        assertEquals(beddingM3, dig.bedding().cubicMetres(), 1e-12);
        assertEquals(20 * widthM * 0.6 - beddingM3 - pipeM3, dig.backfill().cubicMetres(), 1e-12);
        LaidDepth laid = dig.laid().get(0);
        assertEquals(0.6 - 0.05 - OUTSIDE_M, laid.cover().metres(), 1e-12);
        assertEquals(metres(0.45), laid.wanted());
        assertEquals(18 * widthM, dig.cut().get(SurfaceKind.LAWN).squareMetres(), 0.05);
        assertEquals(2 * widthM, dig.cut().get(SurfaceKind.PAVING).squareMetres(), 0.05);
    }

    @Test
    void twoPipesLieBesideEachOther() {
        DiggingResult result = run(site(
                trench("t", polyline(at(0, 5), at(10, 5))).depth(metres(0.6)).holds("branch", "main")));
        TrenchDig dig = dig(result, "t");
        assertEquals(2 * OUTSIDE_M + 0.05 + 0.15, dig.width().metres(), 1e-12);
        assertTrue(dig.laid().stream().allMatch(one -> one.layer().value() == 1));
        assertEquals(0.5, result.saving().ofLength().value(), 1e-12);
        double ownM3 = 10 * (OUTSIDE_M + 0.15) * (0.45 + OUTSIDE_M + 0.05);
        assertEquals(2 * ownM3, result.saving().separateBank().cubicMetres(), 1e-12);
        assertEquals(
                1 - dig.bank().cubicMetres() / (2 * ownM3),
                result.saving().ofVolume().value(),
                1e-12);
    }

    @Test
    void byHandTheSpadeCounts() {
        TrenchDig dig = dig(
                run(site(trench("t", polyline(at(0, 5), at(20, 5)))
                        .depth(metres(0.6))
                        .holds("main")
                        .byHand())),
                "t");
        assertEquals(0.2, dig.width().metres());
        Site own = site(
                limit("digging.width.hand", millimetres(300)),
                trench("t", polyline(at(0, 5), at(20, 5)))
                        .depth(metres(0.6))
                        .holds("main")
                        .byHand());
        assertEquals(0.3, dig(run(own), "t").width().metres());
    }

    /** A slope of 3 in 4: five metres along it for four on the plan. The volume is that of the plan: depths are upright. */
    @Test
    void lengthOnTheGround() {
        Site site = site(
                level(at(0, 0), metres(0)),
                level(at(0, 10), metres(0)),
                level(at(20, 0), metres(15)),
                level(at(20, 10), metres(15)),
                trench("t", polyline(at(0, 5), at(20, 5))).depth(metres(0.6)).holds("main"));
        TrenchDig dig = dig(run(site), "t");
        assertEquals(20, dig.onPlan().metres(), 1e-9);
        assertEquals(25, dig.onGround().metres(), 1e-6);
        assertEquals(20 * 0.6 * dig.width().metres(), dig.bank().cubicMetres(), 1e-9);
    }

    /** Source of the depths: OSHA 29 CFR 1926 subpart P, see checks/excavation.json. */
    @Test
    void deepTrenchesAreDangerous() {
        assertEquals(List.of(), findings(Length.feet(3.9)));
        assertEquals(List.of("digging.depth.exit NOTE"), findings(Length.feet(4)));
        assertEquals(List.of("digging.depth.support CAUTION"), findings(Length.feet(5)));
        Site site = site(
                trench("t", polyline(at(0, 5), at(20, 5))).depth(Length.feet(5)).holds("main"));
        TrenchDig dig = dig(run(site), "t");
        double depthM = Length.feet(5).metres();
        assertEquals(0.3, dig.width().metres(), 1e-12); // a bucket
        assertEquals(20 * (0.3 + 1.5 * depthM) * depthM, dig.bank().cubicMetres(), 1e-9); // sides as for type C
        DiggingResult shored = Digging.run(site, DiggingParameters.defaults().withSideSlope(Ratio.ZERO), Progress.NONE);
        assertEquals(20 * 0.3 * depthM, dig(shored, "t").bank().cubicMetres(), 1e-9);
    }

    private static List<String> findings(Length depth) {
        return run(site(trench("t", polyline(at(0, 5), at(20, 5))).depth(depth).holds("main"))).findings().stream()
                .map(one -> one.rule().id() + " " + one.severity())
                .toList();
    }

    @Test
    void earthThatIsLeftOver() {
        Site site = site(
                trench("t", polyline(at(0, 5), at(20, 5))).depth(metres(0.6)).holds("main"));
        DiggingParameters parameters = DiggingParameters.defaults()
                .withSwell(Ratio.percent(30))
                .withTamped(Ratio.of(0.95))
                .withLoad(Volume.litres(100));
        DigTotals total = Digging.run(site, parameters, Progress.NONE).total();
        double looseM3 = total.bank().cubicMetres() * 1.3;
        double backM3 = total.backfill().cubicMetres() / 0.95 * 1.3;
        assertEquals(looseM3 - backM3, total.leftOver().cubicMetres(), 1e-12);
        assertEquals(Math.ceil((looseM3 - backM3) / 0.1), total.loads().value());
    }

    @Test
    void explanationsEndInTheFigure() {
        Site site = site(
                trench("t", polyline(at(0, 5), at(10, 5))).depth(metres(0.6)).holds("branch", "main"));
        TrenchDig dig = dig(run(site), "t");
        assertEquals(dig.onGround(), why(site, "length").value());
        assertEquals(dig.width(), why(site, "width").value());
        assertEquals(dig.bank(), why(site, "volume").value());
        assertEquals(dig.loose(), why(site, "loose").value());
        assertEquals(dig.bedding(), why(site, "bedding").value());
        assertEquals(dig.backfill(), why(site, "backfill").value());
        var wrong = assertThrows(InvalidValueException.class, () -> why(site, "volum"));
        assertTrue(wrong.getMessage().contains("volume"), wrong.getMessage());
    }

    private static Ledger why(Site site, String figure) {
        return Digging.why(site, DiggingParameters.defaults(), new SegmentId("t"), figure);
    }

    @Test
    void totalsAreTheSumOfThePhases() {
        DiggingResult result = run(site(
                trench("t", polyline(at(0, 5), at(10, 5))).depth(metres(0.6)).holds("branch", "main"),
                trench("u", polyline(at(10, 5), at(20, 5)))
                        .depth(metres(0.6))
                        .holds("main")
                        .phase(leat.model.site.Phase.LATER)));
        double sumM3 = result.byPhase().values().stream()
                .mapToDouble(one -> one.bank().cubicMetres())
                .sum();
        assertEquals(2, result.byPhase().size());
        assertEquals(sumM3, result.total().bank().cubicMetres(), 1e-12);
        assertEquals(
                Severity.NOTE,
                StandingData.load(Yard.EDITION)
                        .rules()
                        .get("digging.depth.exit")
                        .severity());
        assertEquals(new PipeId("branch"), dig(result, "t").laid().get(0).id());
    }
}
