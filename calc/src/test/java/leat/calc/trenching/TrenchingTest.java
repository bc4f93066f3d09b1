package leat.calc.trenching;

import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.setback;
import static leat.model.plan.Parts.trench;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.model.finding.Bound;
import leat.model.finding.Status;
import leat.model.geometry.Point;
import leat.model.id.BibId;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.id.SegmentId;
import leat.model.plan.Aspect;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.trench.TrenchSegment;
import leat.model.water.HoseBib;
import leat.model.water.Lateral;
import leat.model.water.Main;
import leat.model.water.PipeRun;
import leat.model.water.Water;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class TrenchingTest {

    private static final TrenchingParameters USUAL =
            TrenchingParameters.defaults().withEffort(200_000);

    private static Proposal route(Site site) {
        return Trenching.run(site, USUAL, Progress.NONE);
    }

    @Tag("law")
    @Test
    void planningAPlanAgainChangesNothing() {
        Site site = BackYard.zoned();
        Yard once = route(site).yard();
        assertEquals(once, route(site.with(once)).yard());
    }

    @Tag("law")
    @Test
    void everyHeadIsReachedFromItsValve() {
        Proposal proposal = route(BackYard.zoned());
        assertEquals(Status.COMPLETE, proposal.status(), proposal.reasons().toString());
        WaterSystem water = proposal.yard().water();
        for (Zone zone : water.zones()) {
            Lateral lateral = water.lateral(zone.id()).orElseThrow();
            assertEquals(zone.heads(), List.copyOf(lateral.heads().keySet()));
            lateral.heads().forEach((head, pipe) -> {
                Point end = water.pipe(pipe).orElseThrow().route().end();
                assertTrue(end.distanceM(water.head(head).orElseThrow().at()) < 0.01);
            });
        }
        for (PipeRun run : water.pipes().toList()) {
            if (run.from() instanceof PipeId feeder) {
                PipeRun upstream = water.pipe(feeder).orElseThrow();
                Point start = run.route().start();
                assertTrue(upstream.route().nearest(start).distanceM(start) < 0.02, run.id() + " off " + feeder);
            }
        }
    }

    @Tag("law")
    @Test
    void plannedTrenchesKeepAllRules() {
        Site site = BackYard.zoned();
        Yard yard = route(site).yard();
        TrenchReviewResult review = TrenchReview.run(site.with(yard), TrenchReviewParameters.defaults(), Progress.NONE);
        assertEquals(
                List.of("trench.by-hand"),
                review.findings().stream().map(one -> one.rule().id()).toList());
        assertTrue(review.byHand().metres() > 0 && review.byHand().compareTo(review.trenches()) < 0);
        assertTrue(review.shareSaved().value() > 0.3, review.shareSaved().toString());
    }

    @Tag("law")
    @Test
    void trenchesHoldEachNewPipeAlongItsWholeLength() {
        Yard yard = route(BackYard.zoned()).yard();
        yard.water().pipes().filter(run -> !run.existing()).forEach(run -> {
            double inTrenchM = yard.trenches().stream()
                    .filter(trench -> trench.contents().contains(run.id()))
                    .mapToDouble(trench -> trench.route().lengthM())
                    .sum();
            assertEquals(run.route().lengthM(), inTrenchM, 1e-6, run.id().name());
        });
        assertTrue(yard.trenches().stream()
                .allMatch(trench -> trench.pipes().stream()
                        .noneMatch(id -> yard.water().pipe(id).orElseThrow().existing())));
    }

    @Tag("law")
    @Test
    void boundLiesBelowAndNear() {
        Bound bound = route(BackYard.zoned()).bounds().get(0);
        assertTrue(bound.gap().value() >= 0 && bound.gap().value() < 0.03, bound.toString());
    }

    @Tag("law")
    @Test
    void sharedTrenchesAreShorterThanAllPipes() {
        Yard yard = route(BackYard.zoned()).yard();
        double trenchM =
                yard.trenches().stream().mapToDouble(t -> t.route().lengthM()).sum();
        double pipeM = yard.water()
                .pipes()
                .filter(run -> !run.existing())
                .mapToDouble(run -> run.route().lengthM())
                .sum();
        assertTrue(trenchM < pipeM, trenchM + " of " + pipeM);
    }

    @Test
    void manifoldHangsBehindTheBackflowPreventerAndBibsOnAnyMain() {
        Site site = BackYard.zoned();
        WaterSystem water = route(site).yard().water();
        PipeId feeding = water.manifolds().get(0).on().orElseThrow();
        assertEquals(Water.IRRIGATION, water.waterIn(feeding));
        HoseBib given = bib(water, "house");
        assertEquals(Optional.of(new PipeId("service")), given.on());
        assertTrue(bib(water, "terrace").on().isPresent());
        assertEquals(site.yard().water().pipe(new PipeId("riser")), water.pipe(new PipeId("riser")));
    }

    @Tag("law")
    @Test
    void sizesOfRoutesThatStayAreKept() {
        Site site = BackYard.zoned();
        Yard once = route(site).yard();
        Yard sized = withSizes(once, "DN/OD 25");
        assertEquals(sized, route(site.with(sized)).yard());
    }

    @Tag("law")
    @Test
    void pinnedPipesComeOutEqualWhateverMovesAroundThem() {
        Site site = BackYard.zoned();
        Yard once = route(site).yard();
        Lateral lateral = once.water().laterals().get(0);
        PipeRun last = lateral.runs().get(lateral.runs().size() - 1);
        Yard pinned = once.pin(last.id(), Aspect.ROUTE);
        Yard moved = Trenching.run(
                        site.with(pinned), USUAL.withClearance(metres(0.6)).withSetback(metres(0.8)), Progress.NONE)
                .yard();
        assertEquals(Optional.of(last), moved.water().pipe(last.id()));
        assertFalse(moved.isPlanned(last.id(), Aspect.ROUTE));
        assertEquals(
                lateral.heads().keySet(),
                moved.water().laterals().get(0).heads().keySet());
        assertEquals(
                moved,
                Trenching.run(
                                site.with(moved),
                                USUAL.withClearance(metres(0.6)).withSetback(metres(0.8)),
                                Progress.NONE)
                        .yard());
    }

    @Tag("law")
    @Test
    void givenTrenchesComeOutEqual() {
        Site site = BackYard.zoned(
                pipe("hand laid", polyline(at(28.5, 14), at(28, 20)))
                        .from("riser")
                        .series("PE100 SDR 11 (PN 16)"),
                trench("mine", polyline(at(28.5, 14), at(28, 20)))
                        .depth(metres(0.6))
                        .holds("hand laid"));
        Yard yard = route(site).yard();
        TrenchSegment mine = trenchOf(yard, "mine");
        assertEquals(trenchOf(site.yard(), "mine"), mine);
        assertEquals(yard, route(site.with(yard)).yard());
    }

    @Test
    void headsBehindASetbackAreReportedAndTheRestIsRouted() {
        Proposal proposal = route(BackYard.zoned(setback("back line", polyline(at(-1, 33), at(31, 33)))));
        assertEquals(Status.PARTIAL, proposal.status());
        assertEquals(
                List.of("head B2", "head B4", "head B6"),
                proposal.reasons().stream().map(one -> one.subject().toString()).toList());
        assertEquals(
                "no trench may reach it from box; straight on lies limit line back line: draw a pipe through where a crossing is"
                        + " allowed, or move one of the two",
                proposal.reasons().get(0).text());
        assertTrue(proposal.yard().water().laterals().stream()
                .anyMatch(lateral -> lateral.heads().containsKey(new HeadId("B1"))));
    }

    @Test
    void runsEndAtHeadsAndAreNamedByZoneDownstream() {
        WaterSystem water = route(BackYard.zoned()).yard().water();
        for (Lateral lateral : water.laterals()) {
            List<String> names =
                    lateral.runs().stream().map(run -> run.id().name()).toList();
            List<String> expected = new ArrayList<>();
            for (int i = 1; i <= names.size(); i++) {
                expected.add(lateral.zone().name() + "/" + i);
            }
            assertEquals(
                    expected,
                    names.stream()
                            .sorted((a, b) -> new PipeId(a).compareTo(new PipeId(b)))
                            .toList());
        }
    }

    @Test
    void stopGivesARoutedYardAndSaysSo() {
        Progress stop = new Progress() {
            @Override
            public boolean stopped() {
                return true;
            }

            @Override
            public void at(double fraction, String what) {
                assertTrue(fraction >= 0 && fraction <= 1);
            }
        };
        Proposal proposal = Trenching.run(BackYard.zoned(), USUAL, stop);
        assertEquals(Status.STOPPED, proposal.status());
        assertEquals(
                proposal.yard().water().zones().size(),
                proposal.yard().water().laterals().size());
    }

    private static Yard withSizes(Yard yard, String size) {
        WaterSystem water = yard.water();
        List<Lateral> laterals = water.laterals().stream()
                .map(lateral -> new Lateral(
                        lateral.zone(),
                        lateral.runs().stream().map(run -> run.withSize(size)).toList(),
                        lateral.heads()))
                .toList();
        var main = new Main(water.main().runs().stream()
                .map(run -> run.size().isPresent() ? run : run.withSize(size))
                .toList());
        return yard.withWater(water.withMain(main).withLaterals(laterals));
    }

    private static HoseBib bib(WaterSystem water, String name) {
        return water.bibs().stream()
                .filter(bib -> bib.id().equals(new BibId(name)))
                .findFirst()
                .orElseThrow();
    }

    private static TrenchSegment trenchOf(Yard yard, String name) {
        return yard.trenches().stream()
                .filter(trench -> trench.id().equals(new SegmentId(name)))
                .findFirst()
                .orElseThrow();
    }
}
