package leat.model.geometry;

import leat.model.fault.Require;
import leat.model.quantity.Area;
import leat.model.quantity.Length;

/** The ground that a rotor or a spray wets: all within the radius in the directions of the arc. */
public record Sector(Point apex, Arc arc, Length radius) {

    public Sector {
        Require.present("sector", "apex", apex);
        Require.present("sector", "arc", arc);
        Require.moreThan("sector", "radius", radius, Length.ZERO);
    }

    public boolean contains(Point point) {
        return apex.distanceM(point) <= radius.metres() && (point.equals(apex) || arc.holds(apex.bearingTo(point)));
    }

    /** Half the radius squared times the sweep. */
    public Area area() {
        return new Area(arc.sweep().inRadians() / 2 * radius.metres() * radius.metres());
    }
}
