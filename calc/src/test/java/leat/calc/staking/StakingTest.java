package leat.calc.staking;

import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.circle;
import static leat.model.plan.Parts.level;
import static leat.model.plan.Parts.litresPerMinute;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.traverse;
import static leat.model.plan.Parts.trench;
import static leat.model.plan.Parts.yard;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leat.calc.Progress;
import leat.calc.staking.internal.Sight;
import leat.calc.staking.internal.TwoTapes;
import leat.document.StandingData;
import leat.model.plan.Part;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.site.Phase;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A lot of 30 by 40 m that is surveyed from (5, 3), with a house of 12 by 9 m in it. */
@Tag("law")
class StakingTest {

    private static Site site(Part... more) {
        List<Part> parts = new ArrayList<>(List.of(
                traverse(at(5, 3))
                        .go("N 0° E", metres(40))
                        .go("N 90° E", metres(30))
                        .go("S 0° E", metres(40))
                        .close(),
                structure("house", rectangle(at(14, 17), metres(12), metres(9)))));
        parts.addAll(List.of(more));
        return StandingData.load(Yard.EDITION).siteOf(yard("Back").units(METRIC).with(parts.toArray(Part[]::new)));
    }

    private static StakingResult run(Site site) {
        return Staking.run(site, StakingParameters.defaults(), Progress.NONE);
    }

    private static Part head(String name, double x, double y) {
        return spray(name, at(x, y)).family("spray-4_6").arc(0, 90).radius(metres(4));
    }

    private static Part[] scattered() {
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            double x = 5.5 + 29 * ((i * 0.618) % 1);
            double y = 3.5 + 39 * ((i * 0.414) % 1);
            boolean inHouse = x > 13.9 && x < 26.1 && y > 16.9 && y < 26.1;
            if (!inHouse) {
                parts.add(head("S" + i, x, y));
            }
        }
        return parts.toArray(Part[]::new);
    }

    @Test
    void marksAreCornersThatStand() {
        Site site = site(
                structure("barn", rectangle(at(6, 38), metres(4), metres(3))).phase(Phase.LATER),
                structure("tower", circle(at(30, 38), metres(2))));
        assertEquals(
                List.of(
                        "house, NE corner",
                        "house, NW corner",
                        "house, SE corner",
                        "house, SW corner",
                        "lot corner 1",
                        "lot corner 2",
                        "lot corner 3",
                        "lot corner 4"),
                run(site).marks().stream().map(TapeMark::name).toList());
    }

    @Test
    void tapesGiveThePlaceBack() {
        StakingResult result = run(site(scattered()));
        double[] xy = new double[2];
        int tied = 0;
        for (Stake stake : result.stakes()) {
            if (stake.tie().isPresent()) {
                TwoTapeTie tie = stake.tie().get();
                var a = tie.first().mark().at();
                var b = tie.second().mark().at();
                TwoTapes.locate(
                        a.xM(),
                        a.yM(),
                        b.xM(),
                        b.yM(),
                        tie.first().level().metres(),
                        tie.second().level().metres(),
                        tie.side() == TieSide.LEFT,
                        xy);
                assertEquals(stake.at().xM(), xy[0], 1e-6, stake.label());
                assertEquals(stake.at().yM(), xy[1], 1e-6, stake.label());
                assertTrue(tie.crossing().degrees() >= 30 && tie.crossing().degrees() <= 150);
                assertTrue(tie.check().isPresent());
                assertTrue(tie.first().level().metres() <= 30
                        && tie.second().level().metres() <= 30);
                tied++;
            }
        }
        assertEquals(result.stakes().size(), tied);
    }

    /** No pair of marks in sight places a stake better than the one that was chosen. */
    @Test
    void noOtherPairIsSurer() {
        StakingResult result = run(site(scattered()));
        double[] xs = {14, 26, 26, 14};
        double[] ys = {17, 17, 26, 26};
        for (Stake stake : result.stakes()) {
            double x = stake.at().xM();
            double y = stake.at().yM();
            double bestM = Double.POSITIVE_INFINITY;
            for (TapeMark one : result.marks()) {
                for (TapeMark other : result.marks()) {
                    double crossingRad = TwoTapes.crossingRad(
                            x,
                            y,
                            one.at().xM(),
                            one.at().yM(),
                            other.at().xM(),
                            other.at().yM());
                    double oneM = one.at().distanceM(stake.at());
                    double otherM = other.at().distanceM(stake.at());
                    boolean fits = !one.equals(other)
                            && oneM <= 30
                            && otherM <= 30
                            && Math.sin(crossingRad) >= 0.5
                            && Sight.isClear(one.at().xM(), one.at().yM(), x, y, xs, ys)
                            && Sight.isClear(other.at().xM(), other.at().yM(), x, y, xs, ys);
                    if (fits) {
                        bestM = Math.min(
                                bestM, TwoTapes.errorM(0.01 + 0.001 * oneM, 0.01 + 0.001 * otherM, crossingRad));
                    }
                }
            }
            assertEquals(bestM, stake.tie().orElseThrow().accuracy().metres(), 1e-12, stake.label());
        }
    }

    @Test
    void coordinatesCountFromTheCornerThatTheSurveyStartsAt() {
        StakingResult result = run(site(head("S1", 12, 10)));
        Stake stake = result.stakes().get(0);
        assertEquals(7, result.east(stake).metres(), 1e-12);
        assertEquals(7, result.north(stake).metres(), 1e-12);
    }

    /** A rise of 3 m over 4 m on the plan: 5 m straight. */
    @Test
    void slopesLengthenATapeThatLiesOnThem() {
        Site site = site(
                level(at(14, 0), metres(3)),
                level(at(14, 40), metres(3)),
                level(at(10, 0), metres(0)),
                level(at(10, 40), metres(0)),
                level(at(6, 0), metres(-3)),
                level(at(6, 40), metres(-3)),
                head("S1", 10, 17));
        TwoTapeTie tie = run(site).stakes().get(0).tie().orElseThrow();
        TapeTo house = tie.first().mark().name().equals("house, SW corner") ? tie.first() : tie.second();
        assertEquals("house, SW corner", house.mark().name());
        assertEquals(4, house.level().metres(), 1e-9);
        assertEquals(5, house.straight().metres(), 1e-6);
    }

    @Test
    void oneStakeServesWhatMeetsThere() {
        StakingResult result = run(site(
                manifold("box", at(10, 10)),
                bib("tap", at(10, 14)).draws(litresPerMinute(10)),
                trench("t", polyline(at(10, 10), at(10, 12), at(12, 12))).depth(metres(0.4)),
                trench("u", polyline(at(12, 12), at(10, 14))).depth(metres(0.4))));
        assertEquals(
                List.of("box", "tap", "t/2", "t/3"),
                result.stakes().stream().map(Stake::label).toList());
    }

    @Test
    void aStakeThatNoTwoMarksPlaceIsANote() {
        Site bare = StandingData.load(Yard.EDITION)
                .siteOf(yard("Bare")
                        .units(METRIC)
                        .with(structure("shed", rectangle(at(0, 0), metres(2), metres(2))), head("S1", 28, 1)));
        StakingResult result = run(bare);
        assertTrue(result.stakes().get(0).tie().isEmpty());
        assertEquals("staking.crossing", result.findings().get(0).rule().id());
        assertFalse(result.findings().get(0).measured().si() >= 30);
    }
}
