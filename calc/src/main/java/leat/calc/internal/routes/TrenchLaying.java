package leat.calc.internal.routes;

import java.util.List;
import java.util.SortedSet;
import leat.model.geometry.Point;
import leat.model.id.LaidId;
import leat.model.quantity.Length;
import leat.model.site.Phase;

/** How what lies in a trench wants to be laid. */
public interface TrenchLaying {

    /**
     * From finished grade to the bottom of the trench.
     *
     * @param route of the piece of trench, which says under what it runs
     */
    Length depth(SortedSet<LaidId> contents, List<Point> route);

    /** When the trench is dug. */
    Phase phase(SortedSet<LaidId> contents);
}
