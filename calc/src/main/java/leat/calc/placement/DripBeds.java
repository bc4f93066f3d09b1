package leat.calc.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import leat.calc.DripSpacing;
import leat.calc.HeadPhases;
import leat.calc.internal.cells.Covers;
import leat.calc.placement.internal.DripLayout;
import leat.calc.placement.internal.Lattice;
import leat.model.catalog.HeadFamily;
import leat.model.catalog.HeadShape;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Reason;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.geometry.Region;
import leat.model.id.HeadId;
import leat.model.plan.Site;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;
import leat.model.site.Obstacle;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.site.Watering;
import leat.model.water.Bubbler;
import leat.model.water.DripLine;
import leat.model.water.Head;

/** The drip lines that beds watered by drip are given, each fed at the end that is nearer to the source. */
final class DripBeds {

    /** Sides of the polygon that stands for a trunk. */
    private static final int TRUNK_SIDES = 12;

    private final Site site;
    private final DripParameters parameters;
    private final Lattice lattice;
    private final List<DripLine> lines = new ArrayList<>();
    private final List<Reason> reasons = new ArrayList<>();

    private DripBeds(Site site, DripParameters parameters, Lattice lattice) {
        this.site = site;
        this.parameters = parameters;
        this.lattice = lattice;
    }

    /**
     * Lays lines in each bed that has none.
     *
     * @param given heads that stay
     */
    static DripBeds of(Site site, DripParameters parameters, List<Head> given, Lattice lattice) {
        DripBeds beds = new DripBeds(site, parameters, lattice);
        site.yard().terrain().surfaces().stream()
                .filter(surface -> surface.kind() == SurfaceKind.BED && surface.watering() == Watering.DRIP)
                .filter(surface -> given.stream().noneMatch(head -> beds.waters(head, surface)))
                .forEach(surface -> beds.lay(surface, given));
        return beds;
    }

    List<DripLine> lines() {
        return lines;
    }

    List<Reason> reasons() {
        return reasons;
    }

    private boolean waters(Head head, Surface surface) {
        if (HeadPhases.of(head, site.yard()).compareTo(surface.phase()) > 0) {
            return false;
        }
        if (head instanceof DripLine line) {
            Point middle = line.path().at(line.path().length().times(0.5));
            return Stream.concat(line.path().points().stream(), Stream.of(middle))
                    .anyMatch(surface.region()::contains);
        }
        return head instanceof Bubbler && surface.region().contains(head.at());
    }

    private void lay(Surface surface, List<Head> given) {
        HeadFamily family = family();
        double spacingM =
                parameters.rows().orElseGet(() -> DripSpacing.of(surface, site)).metres();
        double mostM = parameters.mostFlow().si() / family.jet().flow().si();
        List<double[]> laid = DripLayout.of(
                surface.region(),
                above(surface),
                new DripLayout.Demand(spacingM, parameters.edge().metres(), mostM, lattice));
        if (laid.isEmpty()) {
            reasons.add(new Reason(Subject.of(surface.id()), surface.id() + " is too narrow for a drip line"));
        }
        SortedSet<HeadId> taken = new TreeSet<>();
        given.forEach(head -> taken.add(head.id()));
        int number = 1;
        for (double[] xyM : laid) {
            HeadId id = new HeadId(MadeHeads.prefix(surface) + number++);
            while (!taken.add(id)) {
                id = new HeadId(MadeHeads.prefix(surface) + number++);
            }
            lines.add(new DripLine(id, family.key(), fromSource(path(xyM))));
        }
    }

    private HeadFamily family() {
        HeadFamily family = site.catalog().head(parameters.family());
        if (family.shape() != HeadShape.DRIP_LINE) {
            throw new InvalidValueException(
                    "drip lines",
                    "family",
                    "'" + family.key() + "', which makes a " + family.shape().label(),
                    "a family that makes a drip line");
        }
        return family;
    }

    /** What lies over the bed, and what stands in it. */
    private List<Region> above(Surface surface) {
        Stream<Region> surfaces = site.yard().terrain().surfaces().stream()
                .filter(other -> Covers.isAbove(other, surface))
                .map(Surface::region);
        Stream<Region> obstacles = site.yard().terrain().obstacles().stream()
                .map(one -> one instanceof Obstacle.Tree tree ? trunk(tree) : ((Obstacle.Block) one).region());
        return Stream.concat(surfaces, obstacles).toList();
    }

    private static Region trunk(Obstacle.Tree tree) {
        // Around the circle, so that none of it sticks out between the corners.
        Length radius = tree.trunk().times(0.5 / Math.cos(Math.PI / TRUNK_SIDES));
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < TRUNK_SIDES; i++) {
            corners.add(tree.at().moved(Angle.degrees(360.0 * i / TRUNK_SIDES), radius));
        }
        return Region.of(corners);
    }

    private static Polyline path(double[] xyM) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xyM.length; i += 2) {
            points.add(new Point(xyM[i], xyM[i + 1]));
        }
        return new Polyline(points);
    }

    private Polyline fromSource(Polyline path) {
        Optional<Point> source =
                site.yard().water().sources().stream().findFirst().map(one -> one.at());
        return source.filter(at -> path.end().distanceM(at) < path.start().distanceM(at))
                .map(at -> path.reversed())
                .orElse(path);
    }
}
