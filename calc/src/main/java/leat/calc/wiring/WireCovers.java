package leat.calc.wiring;

import java.util.List;
import leat.model.geometry.Point;
import leat.model.id.CableId;
import leat.model.id.ConduitId;
import leat.model.id.LaidId;
import leat.model.quantity.Length;

/** How deep conduits and bare cables lie. */
final class WireCovers {

    private final Length below;

    WireCovers(Length below) {
        this.below = below;
    }

    Length depth(LaidId laid, List<Point> route) {
        if (laid instanceof ConduitId || laid instanceof CableId) {
            return Length.inches(18).plus(below);
        }
        return Length.ZERO;
    }
}
