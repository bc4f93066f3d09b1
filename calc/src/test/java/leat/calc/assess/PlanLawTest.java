package leat.calc.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leat.calc.Progress;
import leat.calc.placement.PlacementParameters;
import leat.calc.trenching.TrenchingParameters;
import leat.calc.zoning.ZoningParameters;
import leat.model.id.Id;
import leat.model.plan.Aspect;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Count;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;

/** Whatever the yard: planning the plan again with the same parameters changes nothing. */
@Tag("law")
class PlanLawTest {

    static final PlannerParameters PARAMETERS = PlannerParameters.defaults()
            .withPlacement(PlacementParameters.defaults()
                    .withFamilies(List.of("spray-3_7"))
                    .withEffort(Count.of(50)))
            .withZoning(ZoningParameters.defaults().withEffort(2_000))
            .withTrenching(TrenchingParameters.defaults().withEffort(20_000));

    private static Site planned(Site site) {
        return site.with(Planner.run(site, PARAMETERS, Progress.NONE).yard());
    }

    @RepeatedTest(20)
    void aPlanStays(RepetitionInfo turn) {
        Site once = planned(RandomPlots.of(turn.getCurrentRepetition()));
        assertEquals(once.yard(), planned(once).yard());
    }

    /** Some of what was planned is taken over as given; the rest is planned around it, once. */
    @RepeatedTest(20)
    void aPlanOfWhichSomeIsPinnedStays(RepetitionInfo turn) {
        Site once = planned(RandomPlots.of(turn.getCurrentRepetition()));
        Site pinned = once.with(somePinned(once.yard(), new Random(turn.getCurrentRepetition())));
        Site twice = planned(pinned);
        assertEquals(twice.yard(), planned(twice).yard());
    }

    static Yard somePinned(Yard yard, Random random) {
        Yard pinned = yard;
        List<Id> ids = new ArrayList<>(yard.planned().aspects().keySet());
        for (Id id : ids) {
            for (Aspect aspect : Aspect.values()) {
                if (random.nextInt(6) == 0) {
                    pinned = pinned.pin(id, aspect);
                }
            }
        }
        return pinned;
    }
}
