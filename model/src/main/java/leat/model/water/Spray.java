package leat.model.water;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Arc;
import leat.model.geometry.Point;
import leat.model.geometry.Sector;
import leat.model.id.HeadId;
import leat.model.quantity.Length;

/**
 * Throws a fan of drops over its whole arc at once.
 *
 * @param radius that the builder sets it to at the family's reference pressure, more than 0
 */
public record Spray(HeadId id, String family, Point at, Arc arc, Length radius) implements Head {

    public Spray {
        Require.present("spray", "id", id);
        Require.name("spray " + id, "family", family);
        Require.present("spray " + id, "at", at);
        Require.present("spray " + id, "arc", arc);
        Require.moreThan("spray " + id, "radius", radius, Length.ZERO);
    }

    @Override
    public Optional<Sector> sector() {
        return Optional.of(new Sector(at, arc, radius));
    }
}
