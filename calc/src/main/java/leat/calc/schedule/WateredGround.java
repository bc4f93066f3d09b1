package leat.calc.schedule;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.plan.Site;
import leat.model.quantity.Area;
import leat.model.quantity.Ratio;
import leat.model.site.Obstacle;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.site.Watering;
import leat.model.water.GrowingPlace;

/**
 * A piece of ground that heads water: a lawn, a bed, or the root zone of a tree.
 *
 * @param id      of the surface or the tree
 * @param soil    empty when not said
 * @param slope   rise over run
 * @param covered with grass, which holds water back; else bare between the plants
 */
record WateredGround(
        Id id,
        Area area,
        Optional<String> soil,
        PlantChoice plant,
        GrowingPlace growing,
        Ratio slope,
        boolean covered) {

    /** What a head that throws waters there: a bed counts before a lawn that it lies in; of several the smallest. */
    static Optional<WateredGround> thrownOn(Point point, Site site, Function<Surface, Ratio> slope) {
        return surfaceAt(point, site).map(surface -> of(surface, site, slope));
    }

    /** What water let out there reaches: the roots of the nearest tree, else a bed, else a lawn watered by drip. */
    static Optional<WateredGround> letOutAt(Point point, Site site, Function<Surface, Ratio> slope) {
        Optional<WateredGround> tree = site.yard().terrain().obstacles().stream()
                .filter(Obstacle.Tree.class::isInstance)
                .map(Obstacle.Tree.class::cast)
                .filter(one -> one.at().distance(point).compareTo(one.rootZone()) <= 0)
                .min(Comparator.comparing((Obstacle.Tree one) -> one.at().distance(point))
                        .thenComparing(Obstacle.Tree::id))
                .map(one -> of(one, site));
        Optional<Surface> surface =
                surfaceAt(point, site).filter(one -> one.kind() == SurfaceKind.BED || one.watering() == Watering.DRIP);
        // A line through a bed is for the bed, even past a tree.
        return surface.filter(one -> one.watering() == Watering.DRIP)
                .map(one -> of(one, site, slope))
                .or(() -> tree)
                .or(() -> surface.map(one -> of(one, site, slope)));
    }

    private static Optional<Surface> surfaceAt(Point point, Site site) {
        return site.yard().terrain().surfaces().stream()
                .filter(surface -> surface.kind() == SurfaceKind.LAWN || surface.kind() == SurfaceKind.BED)
                .filter(surface -> surface.region().contains(point))
                .min(Comparator.comparing(Surface::isLawn)
                        .thenComparing(surface -> surface.region().area())
                        .thenComparing(Surface::id));
    }

    private static WateredGround of(Surface surface, Site site, Function<Surface, Ratio> slope) {
        return new WateredGround(
                surface.id(),
                surface.region().area(),
                surface.soil(),
                PlantChoice.of(surface, site.catalog().watering()),
                site.yard().watering().place(surface.id()),
                slope.apply(surface),
                surface.isLawn());
    }

    private static WateredGround of(Obstacle.Tree tree, Site site) {
        double radiusM = tree.rootZone().metres();
        return new WateredGround(
                tree.id(),
                new Area(Math.PI * radiusM * radiusM),
                surfaceAt(tree.at(), site).flatMap(Surface::soil),
                PlantChoice.ofTree(tree.id().name(), site.catalog().watering()),
                GrowingPlace.AVERAGE,
                Ratio.ZERO,
                false);
    }
}
