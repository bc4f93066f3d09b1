package leat.model.catalog;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.quantity.Area;
import leat.model.quantity.Resistance;

/**
 * The metal of a conductor.
 *
 * @param area     of its cross-section
 * @param perMetre resistance of one metre, to direct current; stranded where both kinds are made
 * @param solid    the same for a single solid wire
 * @param celsius  temperature at which the resistances hold
 */
public record Copper(Area area, Resistance perMetre, Optional<Resistance> solid, int celsius) {

    public Copper {
        Require.moreThan("copper", "area", area, Area.ZERO);
        Require.moreThan("copper", "perMetre", perMetre, Resistance.ZERO);
        Require.present("copper", "solid", solid);
    }
}
