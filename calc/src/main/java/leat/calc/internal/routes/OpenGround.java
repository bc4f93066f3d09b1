package leat.calc.internal.routes;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * Where trenches may run: the lot less a setback, less all that must not be dug; and at which corners a shortest trench
 * may bend. Only this class needs general plane geometry.
 */
public final class OpenGround {

    /** Trenches may touch the edge of the allowed ground; the edge is drawn this much wider so that rounding lets them. */
    private static final double EDGE_M = 0.002;

    /** Curved outlines are drawn with fewer corners to bend at; a trench is not dug more precisely than this. */
    private static final double COARSE_M = 0.15;

    /** A pointed corner is cut off beyond this many clearances. */
    private static final double MITRE_LIMIT = 2;

    private static final GeometryFactory SHAPES = new GeometryFactory();

    private final Geometry allowed;
    private final Tolls tolls = new Tolls();
    private final List<double[]> corners = new ArrayList<>();

    /**
     * @param lots       the allowed outline; several patches count together
     * @param forbidden  patches that no trench may cross, with whatever shall be kept from them
     * @param setbackM   kept from the outline of the lots; at least 0
     */
    public OpenGround(List<Patch> lots, List<Patch> forbidden, double setbackM) {
        this.allowed = grown(union(lots), -setbackM).difference(union(forbidden));
        Geometry widened = grown(allowed, EDGE_M);
        for (int i = 0; i < widened.getNumGeometries(); i++) {
            if (widened.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                tolls.addAllowed(patch(polygon));
            }
        }
        addCorners(DouglasPeuckerSimplifier.simplify(allowed, COARSE_M), false);
    }

    /** Ground that is dearer than bare ground, and that a shortest trench may want to pass by its corners. */
    public void addDear(Patch patch, double factor, double clearanceM) {
        tolls.add(patch, factor);
        if (factor > 1) {
            Polygon polygon = polygon(patch);
            addCorners(DouglasPeuckerSimplifier.simplify(grown(polygon, clearanceM), COARSE_M), true);
        }
    }

    public Tolls tolls() {
        return tolls;
    }

    public boolean allows(double xM, double yM) {
        return allowed.distance(SHAPES.createPoint(new Coordinate(xM, yM))) <= EDGE_M;
    }

    /** The allowed point next to a point, as x and y. */
    public double[] nearestAllowed(double xM, double yM) {
        Coordinate[] pair = DistanceOp.nearestPoints(allowed, SHAPES.createPoint(new Coordinate(xM, yM)));
        return new double[] {pair[0].x, pair[0].y};
    }

    /** Whether nothing is left to dig in. */
    public boolean isEmpty() {
        return allowed.isEmpty();
    }

    /** The corners at which a shortest trench may bend, each as x and y, all on allowed ground. */
    public List<double[]> corners() {
        return corners;
    }

    /** Corners that stick out of dear patches, or into allowed ground: a shortest line bends at no others. */
    private void addCorners(Geometry geometry, boolean outer) {
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                addCorners((Polygon) polygon.norm(), outer);
            }
        }
    }

    private void addCorners(Polygon polygon, boolean outer) {
        addRing(polygon.getExteriorRing(), outer);
        for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
            addRing(polygon.getInteriorRingN(h), outer);
        }
    }

    private void addRing(LinearRing ring, boolean outer) {
        Coordinate[] at = ring.getCoordinates();
        int count = at.length - 1;
        for (int i = 0; i < count; i++) {
            Coordinate before = at[(i + count - 1) % count];
            Coordinate after = at[(i + 1) % count];
            double turn = (at[i].x - before.x) * (after.y - at[i].y) - (at[i].y - before.y) * (after.x - at[i].x);
            // Normal form runs clockwise outside and counter-clockwise along holes: ground lies to the right.
            boolean sticksOut = turn < 0;
            if (turn != 0 && sticksOut == outer && allows(at[i].x, at[i].y)) {
                corners.add(new double[] {at[i].x, at[i].y});
            }
        }
    }

    /** The ground within so far of a patch. */
    public static Patch grown(Patch patch, double byM) {
        return byM == 0 ? patch : patch((Polygon) grown(polygon(patch), byM));
    }

    /** The ground within so far of a line. */
    public static Patch strip(double[] xM, double[] yM, double eachSideM) {
        Coordinate[] at = new Coordinate[xM.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = new Coordinate(xM[i], yM[i]);
        }
        return patch((Polygon) grown(SHAPES.createLineString(at), eachSideM));
    }

    /** A polygon of 16 corners around a disc. */
    public static Patch disc(double xM, double yM, double radiusM) {
        int corners = 16;
        double outerM = radiusM / StrictMath.cos(Math.PI / corners);
        double[] x = new double[corners];
        double[] y = new double[corners];
        for (int i = 0; i < corners; i++) {
            x[i] = xM + outerM * StrictMath.sin(2 * Math.PI * i / corners);
            y[i] = yM + outerM * StrictMath.cos(2 * Math.PI * i / corners);
        }
        return Patch.of(x, y);
    }

    private static Geometry grown(Geometry geometry, double byM) {
        if (byM == 0) {
            return geometry;
        }
        // Square caps and mitred corners hold all that is near, and a little more.
        var parameters = new BufferParameters(2, BufferParameters.CAP_SQUARE, BufferParameters.JOIN_MITRE, MITRE_LIMIT);
        return BufferOp.bufferOp(geometry, byM, parameters);
    }

    private static Geometry union(List<Patch> patches) {
        Geometry all = SHAPES.createPolygon();
        for (Patch patch : patches) {
            all = all.union(polygon(patch));
        }
        return all;
    }

    private static Polygon polygon(Patch patch) {
        LinearRing[] holes = new LinearRing[patch.xM().length - 1];
        for (int r = 1; r < patch.xM().length; r++) {
            holes[r - 1] = ring(patch.xM()[r], patch.yM()[r]);
        }
        return SHAPES.createPolygon(ring(patch.xM()[0], patch.yM()[0]), holes);
    }

    private static LinearRing ring(double[] xM, double[] yM) {
        Coordinate[] at = new Coordinate[xM.length + 1];
        for (int i = 0; i < at.length; i++) {
            at[i] = new Coordinate(xM[i % xM.length], yM[i % xM.length]);
        }
        return SHAPES.createLinearRing(at);
    }

    private static Patch patch(Polygon polygon) {
        int rings = 1 + polygon.getNumInteriorRing();
        double[][] xM = new double[rings][];
        double[][] yM = new double[rings][];
        for (int r = 0; r < rings; r++) {
            Coordinate[] at = (r == 0 ? polygon.getExteriorRing() : polygon.getInteriorRingN(r - 1)).getCoordinates();
            xM[r] = new double[at.length - 1];
            yM[r] = new double[at.length - 1];
            for (int i = 0; i < at.length - 1; i++) {
                xM[r][i] = at[i].x;
                yM[r][i] = at[i].y;
            }
        }
        return new Patch(xM, yM);
    }
}
