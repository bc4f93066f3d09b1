package leat.model.water;

import java.util.List;
import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.ManifoldId;
import leat.model.id.PipeId;

/**
 * Zone valves side by side in a box.
 *
 * @param on     the run of the main that feeds it; empty while none is planned
 * @param valves in their order along the manifold by id
 */
public record Manifold(ManifoldId id, Point at, Optional<PipeId> on, List<ZoneValve> valves) {

    public Manifold {
        Require.present("manifold", "id", id);
        Require.present("manifold " + id, "at", at);
        Require.present("manifold " + id, "on", on);
        valves = Require.unique("valve", valves, ZoneValve::id);
    }

    public Manifold withValves(List<ZoneValve> newValves) {
        return new Manifold(id, at, on, newValves);
    }

    public Manifold withOn(Optional<PipeId> newOn) {
        return new Manifold(id, at, newOn, valves);
    }
}
