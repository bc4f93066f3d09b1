package leat.calc.hydraulics;

import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.bar;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.litresPerMinute;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.pump;
import static leat.model.plan.Parts.yard;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import leat.calc.Progress;
import leat.document.StandingData;
import leat.model.finding.Ledger;
import leat.model.finding.Step;
import leat.model.id.BibId;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A bib on a pump that lifts its water and pushes it through a strainer and a check valve. */
@Tag("law")
class RainPumpTest {

    private static final HydraulicsParameters USUAL = HydraulicsParameters.defaults();
    private static final Flow DRAWN = Flow.litresPerMinute(20);

    private static Site site(double liftM, String... fitted) {
        return StandingData.load(Yard.EDITION)
                .siteOf(yard("Croft")
                        .units(METRIC)
                        .with(
                                pump("rain pump", at(0, 0))
                                        .shutOff(bar(5))
                                        .duty(litresPerMinute(40), bar(4))
                                        .lift(metres(liftM)),
                                pipe("main", polyline(at(0, 0), at(12, 0)))
                                        .from("rain pump")
                                        .series("PE100 SDR 11 (PN 16)")
                                        .size("DN/OD 32")
                                        .fitted(fitted),
                                bib("tap", at(12, 0)).on("main").draws(DRAWN)));
    }

    private static Pressure atTap(Site site) {
        return Hydraulics.run(site, USUAL, Progress.NONE)
                .bibs()
                .get(new BibId("tap"))
                .pressure();
    }

    @Test
    void whatIsLiftedIsMissingAtTheTap() {
        double lostPa = atTap(site(0)).minus(atTap(site(3))).pascals();
        assertEquals(3 * 999.1 * 9.80665, lostPa, 1);
    }

    @Test
    void devicesAtTheInletCostWhatTheirLawSays() {
        Site with = site(0, "strainer-1", "check-1");
        double lawPa = with.catalog().device("strainer-1").loss().lossAt(DRAWN).pascals()
                + with.catalog().device("check-1").loss().lossAt(DRAWN).pascals();
        assertEquals(lawPa, atTap(site(0)).minus(atTap(with)).pascals(), 1);
    }

    @Test
    void theLedgerShowsThemAndAddsUp() {
        Ledger ledger = Hydraulics.why(site(3, "strainer-1", "check-1"), USUAL, new BibId("tap"), "pressure");
        assertEquals(
                List.of(
                        "pressure at source rain pump at rest",
                        "fall at source rain pump while the water is drawn",
                        "device at the inlet of pipe main",
                        "device at the inlet of pipe main",
                        "friction and fittings in pipe main",
                        "rise from the source",
                        "pressure that is left"),
                ledger.steps().stream().map(Step::text).toList());
        double sum = ledger.steps().subList(0, ledger.steps().size() - 1).stream()
                .mapToDouble(step -> step.value().si())
                .sum();
        assertEquals(sum, ledger.value().si(), 1e-6);
    }

    @Test
    void aPumpThatStandsTooHighIsFound() {
        HydraulicsResult result = Hydraulics.run(site(8), USUAL, Progress.NONE);
        assertEquals(
                List.of("source.lift source rain pump"),
                result.findings().stream()
                        .map(finding -> finding.rule().id() + " " + finding.subject())
                        .toList());
    }
}
