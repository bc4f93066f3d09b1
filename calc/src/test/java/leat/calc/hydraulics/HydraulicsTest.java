package leat.calc.hydraulics;

import static leat.model.plan.Parts.gpm;
import static leat.model.plan.Parts.psi;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.calc.Progress;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Finding;
import leat.model.finding.Ledger;
import leat.model.finding.Status;
import leat.model.finding.Step;
import leat.model.id.BibId;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.id.ZoneId;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Pressure;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HydraulicsTest {

    private static final HydraulicsParameters USUAL = HydraulicsParameters.defaults();
    private static final ZoneId UP = new ZoneId("up");
    private static final ZoneId ALONG = new ZoneId("along");

    private static HydraulicsResult run(Yard yard) {
        return Hydraulics.run(SlopeYard.site(yard), USUAL, Progress.NONE);
    }

    private static Yard usual() {
        return SlopeYard.yard0(SlopeYard.street(60), true, 0.5);
    }

    /**
     * Source: friction by the US form 4.52 L q^1.852 / (C^1.852 d^4.87) psi and 0.433 psi/ft, as printed in the Uniform
     * Plumbing Code and extension texts; bores 1.049 and 0.824 in, ASTM D1785; device laws of the standing tables. The two
     * forms of the law differ by up to 0.6 %, hence the allowance of 0.06 psi.
     */
    @Tag("reference")
    @Test
    void pressureAtTheOnlyHeadOfAZoneByHand() {
        Site site = SlopeYard.site(usual());
        HydraulicsResult result = Hydraulics.run(site, USUAL.withFittings(false), Progress.NONE);
        HeadPressure head = result.head(new HeadId("R3")).orElseThrow();
        double q = head.flow().inGpm();
        double friction = usPsi(q, 1.049, 60) + usPsi(q, 0.824, 40);
        double devices = List.of("meter-3_4", "bfp-pvb-1", "valve-1").stream()
                .mapToDouble(key ->
                        site.catalog().device(key).loss().lossAt(head.flow()).inPsi())
                .sum();
        assertEquals(60 - friction - devices, head.pressure().inPsi() + riseToR3Ft(site) * 0.433, 0.06);
        assertEquals(2.0 * Math.sqrt(head.pressure().inPsi() / 44.96), q, 0.005); // 310 kPa
    }

    private static double usPsi(double gpm, double boreIn, double lengthFt) {
        return 4.52 * lengthFt * Math.pow(gpm / 150, 1.852) / Math.pow(boreIn, 4.87);
    }

    private static double riseToR3Ft(Site site) {
        var ground = site.yard().terrain().ground();
        var head = site.yard().water().head(new HeadId("R3")).orElseThrow();
        return ground.levelFinished(head.at()).inFeet();
    }

    @Tag("law")
    @Test
    void waterThatGoesInComesOut() {
        HydraulicsResult result = run(usual());
        assertEquals(Status.COMPLETE, result.status());
        ZoneRun up = result.zones().get(UP);
        double heads = up.heads().values().stream()
                .mapToDouble(head -> head.flow().si())
                .sum();
        assertEquals(RunStatus.RUNS, up.status());
        assertEquals(heads, up.flow().si(), 1e-12 * heads);
        assertEquals(heads, up.pipes().get(new PipeId("service")).flow().si(), 1e-12 * heads);
        assertEquals(
                up.heads().get(new HeadId("R2")).flow().si(),
                up.pipes().get(new PipeId("u2")).flow().si(),
                1e-12 * heads);
    }

    @Tag("law")
    @Test
    void morePressureAtTheSourceGivesMoreAtEachHead() {
        Network network = Hydraulics.prepare(SlopeYard.site(usual()), USUAL);
        ZoneRun stated = network.zone(UP);
        ZoneRun more = network.zone(UP, psi(5));
        stated.heads().forEach((id, head) -> {
            HeadPressure raised = more.heads().get(id);
            assertTrue(raised.pressure().compareTo(head.pressure()) > 0);
            assertTrue(raised.pressure().minus(head.pressure()).compareTo(psi(5)) < 0);
        });
        assertEquals(stated, network.zone(UP));
    }

    @Tag("law")
    @ParameterizedTest
    @ValueSource(strings = {"pressure", "flow"})
    void lastLineOfTheLedgerIsTheFigureToTheLastBit(String figure) {
        Site site = SlopeYard.site(usual());
        HydraulicsResult result = Hydraulics.run(site, USUAL, Progress.NONE);
        for (String name : List.of("R1", "R2", "R3")) {
            HeadPressure head = result.head(new HeadId(name)).orElseThrow();
            Ledger ledger = Hydraulics.why(site, USUAL, new HeadId(name), figure);
            assertEquals(figure.equals("flow") ? head.flow() : head.pressure(), ledger.value());
        }
    }

    @Tag("law")
    @Test
    void linesOfTheLedgerAddUp() {
        Site site = SlopeYard.site(usual());
        Ledger ledger = Hydraulics.why(site, USUAL, new HeadId("R2"), "pressure");
        double sum = ledger.steps().subList(0, ledger.steps().size() - 1).stream()
                .mapToDouble(step -> step.value().si())
                .sum();
        assertEquals(sum, ledger.value().si(), 1e-6);
        assertEquals(
                List.of(
                        "pressure at source street at rest",
                        "meter of source street",
                        "friction and fittings in pipe service",
                        "backflow preventer breaker",
                        "friction and fittings in pipe main",
                        "zone valve V1",
                        "friction and fittings in pipe u1",
                        "friction and fittings in pipe u2",
                        "swing joint of head R2",
                        "rise from the source",
                        "pressure that is left"),
                ledger.steps().stream().map(Step::text).toList());
        assertEquals(
                run(usual()).bibs().get(new BibId("tap")).pressure(),
                Hydraulics.why(site, USUAL, new BibId("tap"), "pressure").value());
    }

    @Test
    void figureThatIsNotThereIsRefused() {
        Site site = SlopeYard.site(usual());
        var fault = assertThrows(
                InvalidValueException.class, () -> Hydraulics.why(site, USUAL, new HeadId("R2"), "colour"));
        assertEquals(
                "head R2: figure is 'colour'; it must be pressure or flow of a head or a hose bib, flow of a zone, or flow,"
                        + " velocity or loss of a pipe, where sized pipes lead from the source",
                fault.getMessage());
    }

    @Test
    void usualYardHasNothingWrong() {
        assertEquals(List.of(), run(usual()).findings());
    }

    @Test
    void weakSupplyLeavesHeadsBelowTheirLeastPressure() {
        assertTrue(rules(run(SlopeYard.yard0(SlopeYard.street(36), true, 10))).contains("hydraulics.pressure.least"));
    }

    @Test
    void headsHighUpAreStarved() {
        HydraulicsResult result = run(SlopeYard.yard0(SlopeYard.street(40), true, 120));
        assertEquals(RunStatus.STARVED, result.zones().get(UP).status());
        assertTrue(rules(result).contains("hydraulics.starved"));
        assertEquals(0, result.zones().get(UP).flow().si(), 1e-9);
        assertTrue(result.zones().get(UP).heads().values().stream()
                .allMatch(head -> head.pressure().pascals() < 0));
    }

    @Test
    void strongSupplyAsksForARegulator() {
        SortedSet<String> rules = rules(run(SlopeYard.yard0(SlopeYard.street(110), true, 0)));
        assertTrue(rules.contains("source.pressure"), rules.toString());
        assertTrue(rules.contains("hydraulics.pressure.most"), rules.toString());
    }

    @Test
    void flowTestThatFallsFarLeavesTheSupplyLow() {
        SortedSet<String> rules = rules(run(SlopeYard.yard0(SlopeYard.street(60).flowTest(gpm(4), psi(8)), true, 0)));
        assertTrue(rules.contains("source.residual"), rules.toString());
    }

    @Test
    void breakerBelowTheHighestOutletIsABreach() {
        HydraulicsResult result = run(SlopeYard.yard0(SlopeYard.street(60), true, 20));
        Finding finding = result.findings().stream()
                .filter(one -> one.rule().id().equals("water.backflow.pvb"))
                .findFirst()
                .orElseThrow();
        assertTrue(finding.measured().si() < 0);
    }

    @Test
    void pipeWithoutSizeIsNotRunAndSaidSo() {
        HydraulicsResult result = run(SlopeYard.yard0(SlopeYard.street(60), false, 0));
        assertEquals(Status.PARTIAL, result.status());
        assertEquals(RunStatus.NOT_SIZED, result.zones().get(UP).status());
        assertEquals(3, result.reasons().size());
        assertTrue(result.zones().get(ALONG).heads().isEmpty());
    }

    @Test
    void stoppedCallerGetsWhatIsDone() {
        Progress stop = new Progress() {
            @Override
            public boolean stopped() {
                return true;
            }

            @Override
            public void at(double fraction, String what) {
                // nobody listens
            }
        };
        HydraulicsResult result = Hydraulics.run(SlopeYard.site(usual()), USUAL, stop);
        assertEquals(Status.STOPPED, result.status());
        assertTrue(result.zones().isEmpty());
    }

    @Tag("law")
    @Test
    void fittingsCostPressure() {
        Site site = SlopeYard.site(usual());
        Pressure with = pressure(Hydraulics.run(site, USUAL, Progress.NONE));
        Pressure without = pressure(Hydraulics.run(site, USUAL.withFittings(false), Progress.NONE));
        assertTrue(with.compareTo(without) < 0);
    }

    private static Pressure pressure(HydraulicsResult result) {
        return result.head(new HeadId("R2")).orElseThrow().pressure();
    }

    private static SortedSet<String> rules(HydraulicsResult result) {
        SortedSet<String> rules = new TreeSet<>();
        result.findings().forEach(finding -> rules.add(finding.rule().id()));
        return rules;
    }
}
