package leat.model.water;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.geometry.Sector;
import leat.model.id.HeadId;

/** A line with emitters along its path, fed at its start. */
public record DripLine(HeadId id, String family, Polyline path) implements Head {

    public DripLine {
        Require.present("drip line", "id", id);
        Require.name("drip line " + id, "family", family);
        Require.present("drip line " + id, "path", path);
    }

    @Override
    public Point at() {
        return path.start();
    }

    @Override
    public Optional<Sector> sector() {
        return Optional.empty();
    }
}
