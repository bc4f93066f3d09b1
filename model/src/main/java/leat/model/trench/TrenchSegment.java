package leat.model.trench;

import java.util.List;
import leat.model.fault.Require;
import leat.model.geometry.Polyline;
import leat.model.id.LaidId;
import leat.model.id.PipeId;
import leat.model.id.SegmentId;
import leat.model.quantity.Length;
import leat.model.site.Phase;

/**
 * A piece of trench with the same contents all along.
 *
 * @param depth    from finished grade to its bottom, more than 0
 * @param contents pipes, conduits and bare cables that lie in it, sorted by id
 * @param byHand   dug by hand, near roots or services
 */
public record TrenchSegment(
        SegmentId id, Polyline route, Length depth, List<LaidId> contents, boolean byHand, Phase phase) {

    public TrenchSegment {
        Require.present("trench", "id", id);
        Require.present("trench " + id, "route", route);
        Require.moreThan("trench " + id, "depth", depth, Length.ZERO);
        Require.present("trench " + id, "phase", phase);
        contents = Require.unique("trench " + id + ", content", contents, laid -> laid);
    }

    /** The same trench with other things in it. */
    public TrenchSegment withContents(List<LaidId> other) {
        return new TrenchSegment(id, route, depth, other, byHand, phase);
    }

    /** The pipes that lie in it, sorted by id. */
    public List<PipeId> pipes() {
        return contents.stream()
                .filter(PipeId.class::isInstance)
                .map(PipeId.class::cast)
                .toList();
    }
}
