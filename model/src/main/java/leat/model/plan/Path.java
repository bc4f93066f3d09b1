package leat.model.plan;

import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.geometry.Polyline;
import leat.model.quantity.UnitSystem;

/** A route as a script states it. */
public final class Path {

    private final List<Place> places;

    Path(List<Place> places) {
        this.places = Require.entries("polyline", "places", places);
    }

    /** The route on the plan of a yard in those units. */
    public Polyline in(UnitSystem units) {
        return new Polyline(places.stream().map(place -> place.in(units)).toList());
    }

    /** The same for a thing that is named if its route cannot be so. */
    Polyline in(UnitSystem units, String owner) {
        try {
            return in(units);
        } catch (InvalidValueException e) {
            throw e.within(owner);
        }
    }
}
