package leat.model.water;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.geometry.Sector;
import leat.model.id.HeadId;

/** Lets water run out at one spot, such as at a tree. */
public record Bubbler(HeadId id, String family, Point at) implements Head {

    public Bubbler {
        Require.present("bubbler", "id", id);
        Require.name("bubbler " + id, "family", family);
        Require.present("bubbler " + id, "at", at);
    }

    @Override
    public Optional<Sector> sector() {
        return Optional.empty();
    }
}
