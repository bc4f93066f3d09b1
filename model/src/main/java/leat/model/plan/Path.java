package leat.model.plan;

import java.util.List;
import leat.model.geometry.Polyline;
import leat.model.quantity.UnitSystem;

/** A route as a script states it. */
public final class Path {

    private final List<Place> places;

    Path(List<Place> places) {
        this.places = List.copyOf(places);
    }

    /** The route on the plan of a yard in those units. */
    public Polyline in(UnitSystem units) {
        return new Polyline(places.stream().map(place -> place.in(units)).toList());
    }
}
