package leat.calc.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.calc.placement.internal.Found;
import leat.model.catalog.HeadShape;
import leat.model.geometry.Arc;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.quantity.Length;
import leat.model.site.Surface;
import leat.model.water.Head;
import leat.model.water.Rotor;
import leat.model.water.Spray;

/** Turns what a search found into heads of the model and names them around the surface: meadow/1, meadow/2, … */
final class MadeHeads {

    /** Names have 80 characters at most; some are left for the number. */
    private static final int LONGEST_SURFACE_NAME = 74;

    private MadeHeads() {}

    static List<Head> of(Surface surface, Found found, List<Head> others) {
        SortedSet<HeadId> taken = new TreeSet<>();
        others.forEach(head -> taken.add(head.id()));
        String prefix = prefix(surface);
        List<Head> made = new ArrayList<>();
        int number = 1;
        for (Found.Stand stand : found.stands()) {
            HeadId id = new HeadId(prefix + number++);
            while (taken.contains(id)) {
                id = new HeadId(prefix + number++);
            }
            made.add(made(id, stand));
        }
        return made;
    }

    /** How the names of a surface's heads begin. */
    static String prefix(Surface surface) {
        String name = surface.id().name();
        return name.substring(0, Math.min(name.length(), LONGEST_SURFACE_NAME)).strip() + "/";
    }

    private static Head made(HeadId id, Found.Stand stand) {
        Point at = new Point(stand.xM(), stand.yM());
        Arc arc = Arc.degrees(stand.startDeg(), stand.sweepDeg());
        Length radius = new Length(stand.radiusM());
        String family = stand.offer().family().key();
        return stand.offer().family().shape() == HeadShape.ROTOR
                ? new Rotor(id, family, at, arc, radius)
                : new Spray(id, family, at, arc, radius);
    }
}
