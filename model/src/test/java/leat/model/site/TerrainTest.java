package leat.model.site;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.geometry.Region;
import leat.model.id.DigZoneId;
import leat.model.id.ObstacleId;
import leat.model.id.ServiceId;
import leat.model.id.SurfaceId;
import leat.model.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class TerrainTest {

    private static final Region GROUND = Region.of(new Point(0, 0), new Point(9, 0), new Point(0, 9));

    private static Surface surface(String name, SurfaceKind kind, Optional<String> soil) {
        return new Surface(new SurfaceId(name), kind, GROUND, Watering.NONE, soil, Optional.empty(), Phase.NOW);
    }

    @Tag("law")
    @Test
    void surfacesStandInTheOrderOfTheirNames() {
        Terrain terrain = new Terrain(
                Optional.empty(),
                Ground.FLAT,
                List.of(
                        surface("lawn 10", SurfaceKind.LAWN, Optional.empty()),
                        surface("path", SurfaceKind.PAVING, Optional.empty()),
                        surface("lawn 2", SurfaceKind.LAWN, Optional.empty())),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        assertEquals(
                List.of("lawn 2", "lawn 10"),
                terrain.lawns().stream().map(one -> one.id().name()).toList());
        assertEquals(Optional.empty(), terrain.lot());
        assertEquals(Optional.empty(), terrain.surface(new SurfaceId("pond")));
        assertTrue(SurfaceKind.PAVING.mustStayDry() && SurfaceKind.STRUCTURE.mustStayDry());
        assertFalse(SurfaceKind.LAWN.mustStayDry() || SurfaceKind.BED.mustStayDry() || SurfaceKind.WATER.mustStayDry());
    }

    @Tag("pinned")
    @Test
    void refusals() {
        refused(
                "digging rule roots: doubt is -1 m; it must be at least 0 m",
                () -> new DigZone(new DigZoneId("roots"), DigZone.Kind.NO_DIG, GROUND, Length.metres(-1)));
        refused(
                "existing service gas: doubt is -1 m; it must be at least 0 m",
                () -> new ExistingService(
                        new ServiceId("gas"),
                        ExistingService.Kind.GAS,
                        Polyline.of(new Point(0, 0), new Point(1, 0)),
                        Length.metres(-1)));
        refused(
                "tree oak: trunk is 0 m; it must be more than 0 m",
                () -> new Obstacle.Tree(new ObstacleId("oak"), new Point(0, 0), Length.ZERO));
        refused(
                "surface lawn: soil is ' '; it must be 1 to 80 printable characters without a space at either end",
                () -> surface("lawn", SurfaceKind.LAWN, Optional.of(" ")));
    }
}
