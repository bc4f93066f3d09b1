package leat.model.power;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.PanelId;
import leat.model.id.SurfaceId;
import leat.model.quantity.Count;
import leat.model.quantity.Current;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;

/**
 * A panel from which circuits start.
 *
 * @param voltage   between a live conductor and neutral
 * @param rating    of its main breaker
 * @param spareWays free places for breakers
 * @param inside    the structure in which it stands
 */
public record Panel(
        PanelId id,
        Point at,
        Voltage voltage,
        Current rating,
        Count spareWays,
        Optional<SurfaceId> inside,
        boolean existing,
        Phase phase)
        implements PowerSupply {

    public Panel {
        Require.present("panel", "id", id);
        String thing = "panel " + id;
        Require.present(thing, "at", at);
        Require.moreThan(thing, "voltage", voltage, Voltage.ZERO);
        Require.moreThan(thing, "rating", rating, Current.ZERO);
        Require.atLeast(thing, "spareWays", spareWays, Count.of(0));
        Require.present(thing, "inside", inside);
        Require.present(thing, "phase", phase);
    }
}
