package leat.calc;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leat.model.geometry.Point;
import leat.model.geometry.Sector;
import leat.model.plan.Aspect;
import leat.model.plan.Yard;
import leat.model.quantity.Angle;
import leat.model.site.Phase;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.water.Head;
import leat.model.water.Zone;

/** When a head is built: with its zone, if that is given; else with the lawn or bed that it waters. */
public final class HeadPhases {

    /** Where in its arc a head is taken to water, as shares of the sweep: heads on an edge often throw along it. */
    private static final List<Double> LOOKS = List.of(0.5, 0.25, 0.75);

    private HeadPhases() {}

    /** A head of now waters something of now, or nothing that is on the plan. */
    public static Phase of(Head head, Yard yard) {
        Optional<Zone> given = yard.water()
                .zoneOf(head.id())
                .filter(zone -> !yard.isPlanned(zone.id(), Aspect.ZONE) && !yard.isPlanned(head.id(), Aspect.ZONE));
        if (given.isPresent()) {
            return given.get().phase();
        }
        return looks(head)
                .flatMap(point -> planted(point, yard).stream())
                .findFirst()
                .map(Surface::phase)
                .orElse(Phase.NOW);
    }

    /** Places that the head waters, the surest first: half way out in its arc, and where it stands. */
    public static Stream<Point> looks(Head head) {
        Stream<Point> inside =
                head.sector().stream().flatMap(sector -> LOOKS.stream().map(share -> halfWayOut(sector, share)));
        return Stream.concat(inside, Stream.of(head.at()));
    }

    private static Point halfWayOut(Sector sector, double share) {
        double bearing =
                sector.arc().start().degrees() + share * sector.arc().sweep().degrees();
        return sector.apex().moved(Angle.degrees(bearing), sector.radius().times(0.5));
    }

    /** The lawn or bed there; where a bed lies in a lawn, the bed. */
    private static Optional<Surface> planted(Point point, Yard yard) {
        return yard.terrain().surfaces().stream()
                .filter(surface -> surface.kind() == SurfaceKind.LAWN || surface.kind() == SurfaceKind.BED)
                .filter(surface -> surface.region().contains(point))
                .min(Comparator.comparing(surface -> surface.isLawn())); // of equals the first by id
    }
}
