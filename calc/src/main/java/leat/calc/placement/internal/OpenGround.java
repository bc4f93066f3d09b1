package leat.calc.placement.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leat.calc.internal.cells.Rings;
import leat.model.geometry.Region;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The border of what is left of a surface where others are drawn over it. */
public final class OpenGround {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Slivers between lines that nearly agree are no ground to place heads on. */
    private static final double LEAST_AREA_M2 = 0.25;

    private OpenGround() {}

    /** Outer lines and holes, the largest piece first; those of the surface itself if nothing lies over it. */
    public static double[][] rings(Region surface, List<Region> above) {
        Geometry open = of(surface, above);
        double whole = surface.area().si();
        if (whole - open.getArea() < 1e-6 * whole) {
            return Rings.of(surface);
        }
        List<Polygon> pieces = new ArrayList<>();
        for (int i = 0; i < open.getNumGeometries(); i++) {
            if (open.getGeometryN(i) instanceof Polygon piece && piece.getArea() >= LEAST_AREA_M2) {
                pieces.add(piece);
            }
        }
        pieces.sort(Comparator.<Polygon>comparingDouble(piece -> -piece.getArea())
                .thenComparingDouble(piece -> piece.getEnvelopeInternal().getMinX()));
        List<double[]> rings = new ArrayList<>();
        for (Polygon piece : pieces) {
            rings.add(flat(piece.getExteriorRing()));
            for (int i = 0; i < piece.getNumInteriorRing(); i++) {
                rings.add(flat(piece.getInteriorRingN(i)));
            }
        }
        return rings.toArray(new double[0][]);
    }

    /** What is left of a surface where others are drawn over it: polygons, maybe none. */
    static Geometry of(Region surface, List<Region> above) {
        Geometry open = polygon(surface);
        for (Region other : above) {
            Geometry cover = polygon(other);
            if (cover.getEnvelopeInternal().intersects(open.getEnvelopeInternal())) {
                open = OverlayNGRobust.overlay(open, cover, OverlayNG.DIFFERENCE);
            }
        }
        return open;
    }

    private static Polygon polygon(Region region) {
        LinearRing[] rings = new LinearRing[region.rings().size()];
        double[][] flat = Rings.of(region);
        for (int i = 0; i < rings.length; i++) {
            rings[i] = ring(flat[i]);
        }
        LinearRing[] holes = new LinearRing[rings.length - 1];
        System.arraycopy(rings, 1, holes, 0, holes.length);
        return FACTORY.createPolygon(rings[0], holes);
    }

    private static LinearRing ring(double[] flat) {
        int corners = flat.length / 2;
        Coordinate[] coordinates = new Coordinate[corners + 1];
        for (int i = 0; i <= corners; i++) {
            coordinates[i] = new Coordinate(flat[2 * (i % corners)], flat[2 * (i % corners) + 1]);
        }
        return FACTORY.createLinearRing(coordinates);
    }

    static double[] flat(LinearRing ring) {
        double[] flat = new double[2 * (ring.getNumPoints() - 1)];
        for (int i = 0; i < flat.length / 2; i++) {
            flat[2 * i] = ring.getCoordinateN(i).x;
            flat[2 * i + 1] = ring.getCoordinateN(i).y;
        }
        return flat;
    }
}
