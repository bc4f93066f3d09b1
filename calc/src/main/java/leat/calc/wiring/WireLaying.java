package leat.calc.wiring;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.calc.internal.routes.PipeLaying;
import leat.calc.internal.routes.TrenchLaying;
import leat.model.geometry.Point;
import leat.model.id.LaidId;
import leat.model.quantity.Length;
import leat.model.site.Phase;

/** Pipes, conduits and cables in one trench: as deep as the one wants that wants most, dug when the first of them comes. */
final class WireLaying implements TrenchLaying {

    private final PipeLaying pipes;
    private final WireCovers covers;
    private final Length below;
    private final SortedSet<LaidId> now;

    /**
     * @param below added to the cover for what lies there and what it lies on
     * @param now conduits and bare cables that are laid now
     */
    WireLaying(PipeLaying pipes, WireCovers covers, Length below, SortedSet<LaidId> now) {
        this.pipes = pipes;
        this.covers = covers;
        this.below = below;
        this.now = new TreeSet<>(now);
    }

    @Override
    public Length depth(SortedSet<LaidId> contents, List<Point> route) {
        Length deepest = pipes.depth(contents, route);
        for (LaidId laid : contents) {
            Length wanted = covers.depth(laid, route, below);
            deepest = wanted.compareTo(deepest) > 0 ? wanted : deepest;
        }
        return deepest;
    }

    @Override
    public Phase phase(SortedSet<LaidId> contents) {
        boolean wiresNow = contents.stream().anyMatch(now::contains);
        return wiresNow ? Phase.NOW : pipes.phase(contents);
    }
}
