package leat.model.water;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Arc;
import leat.model.geometry.Point;
import leat.model.geometry.Sector;
import leat.model.id.HeadId;
import leat.model.quantity.Length;

/**
 * Throws one or more streams that turn slowly over its arc.
 *
 * @param radius that the builder sets it to at the family's reference pressure, more than 0
 */
public record Rotor(HeadId id, String family, Point at, Arc arc, Length radius) implements Head {

    public Rotor {
        Require.present("rotor", "id", id);
        Require.name("rotor " + id, "family", family);
        Require.present("rotor " + id, "at", at);
        Require.present("rotor " + id, "arc", arc);
        Require.moreThan("rotor " + id, "radius", radius, Length.ZERO);
    }

    @Override
    public Optional<Sector> sector() {
        return Optional.of(new Sector(at, arc, radius));
    }
}
