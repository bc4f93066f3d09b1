package leat.document;

import java.util.List;
import java.util.Map;
import leat.model.geometry.Point;
import leat.model.id.DigZoneId;
import leat.model.id.LineId;
import leat.model.id.ObstacleId;
import leat.model.id.ServiceId;
import leat.model.id.SurfaceId;
import leat.model.quantity.Angle;
import leat.model.quantity.Dimension;
import leat.model.quantity.UnitSystem;
import leat.model.site.Course;
import leat.model.site.DigZone;
import leat.model.site.ExistingService;
import leat.model.site.Ground;
import leat.model.site.LimitLine;
import leat.model.site.Obstacle;
import leat.model.site.Phase;
import leat.model.site.SpotLevel;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.site.Survey;
import leat.model.site.Terrain;
import leat.model.site.Watering;

/** The section {@code site}: what was there before the plan, and the surfaces. */
final class SiteSection {

    private final Places places;

    SiteSection(Places places) {
        this.places = places;
    }

    static Map<String, Object> written(Terrain terrain, UnitSystem units) {
        FieldWriter out = new FieldWriter(units);
        terrain.survey().ifPresent(survey -> out.object("survey", survey(survey, units)));
        return out.list("levels", levels(terrain.ground().asItIs(), units))
                .list("finishedLevels", levels(terrain.ground().finished(), units))
                .list("surfaces", Lists.map(terrain.surfaces(), one -> surface(one, units)))
                .list("obstacles", Lists.map(terrain.obstacles(), one -> obstacle(one, units)))
                .list("services", Lists.map(terrain.services(), one -> service(one, units)))
                .list("digZones", Lists.map(terrain.digZones(), one -> digZone(one, units)))
                .list("limitLines", Lists.map(terrain.limitLines(), one -> limitLine(one, units)))
                .fields();
    }

    Terrain read(Json json) {
        FieldReader in = FieldReader.of(
                json,
                "site",
                places,
                "survey",
                "levels",
                "finishedLevels",
                "surfaces",
                "obstacles",
                "services",
                "digZones",
                "limitLines");
        return in.made(() -> new Terrain(
                in.optional("survey", this::survey),
                new Ground(in.list("levels", this::level), in.list("finishedLevels", this::level)),
                in.list("surfaces", this::surface),
                in.list("obstacles", this::obstacle),
                in.list("services", this::service),
                in.list("digZones", this::digZone),
                in.list("limitLines", this::limitLine)));
    }

    private static FieldWriter survey(Survey survey, UnitSystem units) {
        return new FieldWriter(units)
                .point("start", survey.start())
                .list(
                        "courses",
                        Lists.map(
                                survey.courses(),
                                course -> new FieldWriter(units)
                                        .quantity("bearing", course.bearing())
                                        .quantity("distance", course.distance())
                                        .fields()))
                .word("closing", survey.closing());
    }

    private Survey survey(Json json) {
        FieldReader in = FieldReader.of(json, "survey", places, "start", "courses", "closing");
        Point start = in.point("start");
        List<Course> courses = in.list("courses", this::course);
        Survey.Closing closing = in.word("closing", Survey.Closing.class);
        return in.spot("courses").guard(() -> new Survey(start, courses, closing));
    }

    private Course course(Json json) {
        FieldReader in = FieldReader.of(json, "course", places, "bearing", "distance");
        Angle bearing = in.quantity("bearing", Dimension.ANGLE, Angle.class);
        return in.made(() -> new Course(bearing, in.length("distance")));
    }

    private static List<?> levels(List<SpotLevel> levels, UnitSystem units) {
        return Lists.map(
                levels,
                one -> new FieldWriter(units)
                        .point("at", one.at())
                        .quantity("level", one.level())
                        .fields());
    }

    private SpotLevel level(Json json) {
        FieldReader in = FieldReader.of(json, "level", places, "at", "level");
        return new SpotLevel(in.point("at"), in.length("level"));
    }

    private static Map<String, Object> surface(Surface surface, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", surface.id())
                .word("kind", surface.kind())
                .region(surface.region())
                .word("watering", surface.watering(), Watering.NONE)
                .text("soil", surface.soil())
                .text("planting", surface.planting())
                .word("phase", surface.phase(), Phase.NOW)
                .fields();
    }

    private Surface surface(Json json) {
        FieldReader in = FieldReader.of(
                json, "surface", places, "id", "kind", "outline", "holes", "watering", "soil", "planting", "phase");
        return in.named(() -> new Surface(
                in.id("id", SurfaceId::new),
                in.word("kind", SurfaceKind.class),
                in.region(),
                in.word("watering", Watering.class, Watering.NONE),
                in.optionalText("soil"),
                in.optionalText("planting"),
                in.word("phase", Phase.class, Phase.NOW)));
    }

    private enum ObstacleKind {
        BLOCK,
        TREE
    }

    private static Map<String, Object> obstacle(Obstacle obstacle, UnitSystem units) {
        FieldWriter out = new FieldWriter(units).id("id", obstacle.id());
        if (obstacle instanceof Obstacle.Tree tree) {
            return out.word("kind", ObstacleKind.TREE)
                    .point("at", tree.at())
                    .quantity("trunk", tree.trunk())
                    .fields();
        }
        if (obstacle instanceof Obstacle.Block block) {
            return out.word("kind", ObstacleKind.BLOCK).region(block.region()).fields();
        }
        throw new AssertionError(obstacle);
    }

    private Obstacle obstacle(Json json) {
        if (FieldReader.kind(json, "obstacle", ObstacleKind.class) == ObstacleKind.TREE) {
            FieldReader in = FieldReader.of(json, "tree", places, "id", "kind", "at", "trunk");
            return in.named(() -> new Obstacle.Tree(in.id("id", ObstacleId::new), in.point("at"), in.length("trunk")));
        }
        FieldReader in = FieldReader.of(json, "block", places, "id", "kind", "outline", "holes");
        return in.named(() -> new Obstacle.Block(in.id("id", ObstacleId::new), in.region()));
    }

    private static Map<String, Object> service(ExistingService service, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", service.id())
                .word("kind", service.kind())
                .route("route", service.route())
                .quantity("doubt", service.doubt())
                .fields();
    }

    private ExistingService service(Json json) {
        FieldReader in = FieldReader.of(json, "existing service", places, "id", "kind", "route", "doubt");
        return in.named(() -> new ExistingService(
                in.id("id", ServiceId::new),
                in.word("kind", ExistingService.Kind.class),
                in.route("route"),
                in.length("doubt")));
    }

    private static Map<String, Object> digZone(DigZone zone, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", zone.id())
                .word("kind", zone.kind())
                .region(zone.region())
                .quantity("doubt", zone.doubt())
                .fields();
    }

    private DigZone digZone(Json json) {
        FieldReader in = FieldReader.of(json, "dig zone", places, "id", "kind", "outline", "holes", "doubt");
        return in.named(() -> new DigZone(
                in.id("id", DigZoneId::new), in.word("kind", DigZone.Kind.class), in.region(), in.length("doubt")));
    }

    private static Map<String, Object> limitLine(LimitLine line, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", line.id())
                .word("kind", line.kind())
                .route("line", line.line())
                .fields();
    }

    private LimitLine limitLine(Json json) {
        FieldReader in = FieldReader.of(json, "limit line", places, "id", "kind", "line");
        return in.named(
                () -> new LimitLine(in.id("id", LineId::new), in.word("kind", LimitLine.Kind.class), in.route("line")));
    }
}
