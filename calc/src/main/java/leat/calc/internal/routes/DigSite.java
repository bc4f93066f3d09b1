package leat.calc.internal.routes;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import leat.calc.DiggingCosts;
import leat.calc.GivenPipes;
import leat.calc.TrenchChoices;
import leat.model.geometry.Bounds;
import leat.model.geometry.Point;
import leat.model.geometry.Region;
import leat.model.id.PipeId;
import leat.model.plan.Aspect;
import leat.model.plan.Site;
import leat.model.power.PowerSystem;
import leat.model.quantity.Length;
import leat.model.site.DigZone;
import leat.model.site.LimitLine;
import leat.model.site.Obstacle;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.site.Terrain;

/**
 * The ground of a site as trenches see it.
 *
 * @param open    where they may run, and what that costs
 * @param byHand  the ground where they are dug by hand: its factor is above 1 there
 * @param corners all corners that a trench may bend at, with the ways between them
 */
public record DigSite(OpenGround open, Tolls byHand, Ways corners) {

    /** Half the width of the ribbon that stands for a line not to cross. */
    private static final double LINE_M = 0.01;

    /** Where no survey says how far the lot goes, trenches may go this much beyond all that is there. */
    private static final double UNSURVEYED_M = 10;

    /** Hand digging begins this much earlier than the rule asks, so that rounding in a crossing breaks no rule. */
    private static final double EARLIER_M = 0.01;

    /** A trench that passes dear ground keeps this much off it. */
    private static final double PASSING_M = 0.1;

    public static DigSite of(Site site, TrenchChoices choices) {
        Terrain terrain = site.yard().terrain();
        double clearanceM = choices.clearance().metres();
        var open = new OpenGround(
                List.of(lot(site)),
                forbidden(terrain, clearanceM),
                terrain.lot().isPresent() ? choices.setback().metres() : 0);
        addDear(open, terrain, choices.digging());
        var byHand = new Tolls();
        addByHand(open, byHand, site, choices.digging());
        var corners = new Ways(open.tolls());
        open.corners().forEach(corner -> corners.add(corner[0], corner[1]));
        return new DigSite(open, byHand, corners);
    }

    private static Patch lot(Site site) {
        return site.yard().terrain().lot().map(DigSite::patch).orElseGet(() -> {
            Bounds bounds = around(site).grown(UNSURVEYED_M);
            return Patch.of(
                    new double[] {bounds.leastXM(), bounds.mostXM(), bounds.mostXM(), bounds.leastXM()},
                    new double[] {bounds.leastYM(), bounds.leastYM(), bounds.mostYM(), bounds.mostYM()});
        });
    }

    private static Bounds around(Site site) {
        List<Point> points = new ArrayList<>();
        site.yard()
                .terrain()
                .surfaces()
                .forEach(one -> points.addAll(one.region().outer()));
        site.yard().water().heads().forEach(one -> points.add(one.at()));
        site.yard().water().manifolds().forEach(one -> points.add(one.at()));
        site.yard().water().bibs().forEach(one -> points.add(one.at()));
        site.yard().water().sources().forEach(one -> points.add(one.at()));
        // Planned routes are left out: planning again must see the same ground.
        SortedSet<PipeId> given = GivenPipes.of(site.yard());
        site.yard()
                .water()
                .pipes()
                .filter(run -> given.contains(run.id()))
                .forEach(run -> points.addAll(run.route().points()));
        PowerSystem power = site.yard().power();
        power.panels().forEach(one -> points.add(one.at()));
        power.switches().forEach(one -> points.add(one.at()));
        power.loads().forEach(one -> points.add(one.at()));
        power.conduits().stream()
                .filter(one -> one.existing() || !site.yard().isPlanned(one.id(), Aspect.ROUTE))
                .forEach(one -> points.addAll(one.route().points()));
        return Bounds.around(points.isEmpty() ? List.of(new Point(0, 0)) : points);
    }

    private static List<Patch> forbidden(Terrain terrain, double clearanceM) {
        List<Patch> patches = new ArrayList<>();
        for (Surface surface : terrain.surfaces()) {
            if (cannotBeDug(surface.kind())) {
                patches.add(OpenGround.grown(patch(surface.region()), clearanceM));
            }
        }
        for (Obstacle obstacle : terrain.obstacles()) {
            if (obstacle instanceof Obstacle.Block block) {
                patches.add(OpenGround.grown(patch(block.region()), clearanceM));
            } else if (obstacle instanceof Obstacle.Tree tree) {
                patches.add(disc(tree.at(), tree.trunk().times(0.5).plus(new Length(clearanceM))));
            }
        }
        for (DigZone zone : terrain.digZones()) {
            if (zone.kind() == DigZone.Kind.NO_DIG) {
                patches.add(OpenGround.grown(
                        patch(zone.region()), clearanceM + zone.doubt().metres()));
            }
        }
        for (LimitLine line : terrain.limitLines()) {
            patches.add(strip(line.line().points(), LINE_M));
        }
        return patches;
    }

    public static boolean cannotBeDug(SurfaceKind kind) {
        return kind == SurfaceKind.STRUCTURE || kind == SurfaceKind.WATER;
    }

    private static void addDear(OpenGround open, Terrain terrain, DiggingCosts costs) {
        for (Surface surface : terrain.surfaces()) {
            if (surface.kind() == SurfaceKind.BED) {
                open.addDear(patch(surface.region()), costs.bed().value(), PASSING_M);
            } else if (surface.kind() == SurfaceKind.PAVING) {
                open.addDear(patch(surface.region()), costs.paving().value(), PASSING_M);
            }
        }
    }

    private static void addByHand(OpenGround open, Tolls byHand, Site site, DiggingCosts costs) {
        Terrain terrain = site.yard().terrain();
        for (DigZone zone : terrain.digZones()) {
            if (zone.kind() == DigZone.Kind.HAND_DIG) {
                addByHand(
                        open,
                        byHand,
                        OpenGround.grown(patch(zone.region()), zone.doubt().metres()),
                        costs.handDig().value());
            }
        }
        for (Obstacle obstacle : terrain.obstacles()) {
            if (obstacle instanceof Obstacle.Tree tree) {
                addByHand(
                        open,
                        byHand,
                        disc(tree.at(), tree.rootZone()),
                        costs.roots().value());
            }
        }
        double nearM = site.rules().get("trench.service").limit().si() + EARLIER_M;
        terrain.services()
                .forEach(service -> addByHand(
                        open,
                        byHand,
                        strip(service.route().points(), nearM + service.doubt().metres()),
                        costs.handDig().value()));
    }

    private static void addByHand(OpenGround open, Tolls byHand, Patch patch, double factor) {
        open.addDear(patch, factor, PASSING_M);
        byHand.add(patch, 2);
    }

    public static Patch patch(Region region) {
        List<List<Point>> rings = region.rings();
        return new Patch(
                rings.stream().map(DigSite::east).toArray(double[][]::new),
                rings.stream().map(DigSite::north).toArray(double[][]::new));
    }

    public static Patch disc(Point at, Length radius) {
        return OpenGround.disc(at.xM(), at.yM(), radius.metres());
    }

    public static Patch strip(List<Point> points, double eachSideM) {
        return OpenGround.strip(east(points), north(points), eachSideM);
    }

    private static double[] east(List<Point> points) {
        return points.stream().mapToDouble(Point::xM).toArray();
    }

    private static double[] north(List<Point> points) {
        return points.stream().mapToDouble(Point::yM).toArray();
    }
}
