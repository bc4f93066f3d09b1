package leat.model.site;

import java.util.List;
import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Region;
import leat.model.id.SurfaceId;

/**
 * All that was there before the plan, and the surfaces that will be.
 *
 * @param survey empty while the lot was not measured; then nothing is outside it
 */
public record Terrain(
        Optional<Survey> survey,
        Ground ground,
        List<Surface> surfaces,
        List<Obstacle> obstacles,
        List<ExistingService> services,
        List<DigZone> digZones,
        List<LimitLine> limitLines) {

    public static final Terrain EMPTY =
            new Terrain(Optional.empty(), Ground.FLAT, List.of(), List.of(), List.of(), List.of(), List.of());

    public Terrain {
        Require.present("terrain", "survey", survey);
        Require.present("terrain", "ground", ground);
        surfaces = Require.unique("surface", surfaces, Surface::id);
        obstacles = Require.unique("obstacle", obstacles, Obstacle::id);
        services = Require.unique("existing service", services, ExistingService::id);
        digZones = Require.unique("digging rule", digZones, DigZone::id);
        limitLines = Require.unique("limit line", limitLines, LimitLine::id);
    }

    public Optional<Region> lot() {
        return survey.map(Survey::boundary);
    }

    public List<Surface> lawns() {
        return surfaces.stream().filter(Surface::isLawn).toList();
    }

    public Optional<Surface> surface(SurfaceId id) {
        return surfaces.stream().filter(surface -> surface.id().equals(id)).findFirst();
    }
}
