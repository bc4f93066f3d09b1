package leat.calc;

import java.util.List;
import java.util.SortedSet;
import leat.model.id.CableId;
import leat.model.id.ConduitId;
import leat.model.id.LaidId;
import leat.model.id.PipeId;
import leat.model.plan.Aspect;
import leat.model.plan.Yard;
import leat.model.trench.TrenchSegment;

/** Which trenches a stage has to leave as they are, and what was stated to lie in them. */
public final class GivenTrenches {

    private GivenTrenches() {}

    /** Trenches whose route is given, with what is given of their contents; what a stage laid there it lays anew. */
    public static List<TrenchSegment> of(Yard yard) {
        SortedSet<PipeId> pipes = GivenPipes.of(yard);
        return yard.trenches().stream()
                .filter(trench -> !yard.isPlanned(trench.id(), Aspect.ROUTE))
                .map(trench -> trench.withContents(trench.contents().stream()
                        .filter(laid -> isGiven(laid, yard, pipes))
                        .toList()))
                .toList();
    }

    private static boolean isGiven(LaidId laid, Yard yard, SortedSet<PipeId> pipes) {
        if (laid instanceof PipeId pipe) {
            return pipes.contains(pipe);
        }
        boolean exists = laid instanceof ConduitId conduit
                ? yard.power().conduit(conduit).filter(one -> one.existing()).isPresent()
                : yard.power()
                        .cable((CableId) laid)
                        .filter(one -> one.existing())
                        .isPresent();
        return exists || !yard.isPlanned(laid, Aspect.ROUTE);
    }
}
