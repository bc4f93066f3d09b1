package leat.calc.placement.internal;

import java.util.ArrayList;
import java.util.List;
import leat.calc.internal.cells.Rings;
import leat.model.geometry.Region;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** Lays drip lines in a bed: rows along its longest side, joined there and back as far as the bed is in one piece. */
public final class DripLayout {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Corners flatter than that, in parts of the distance from the edge, are drawn straight. */
    private static final double FLAT_RATIO = 0.2;

    /** How far a straight piece may stray over the line that rows end on: rounding. */
    private static final double ROUNDING_M = 1e-4;

    /** A shorter row is no row; in the tip of a bed short ones count. */
    private static final double LEAST_ROW_M = 0.02;

    private final Geometry open;
    private final Demand demand;
    private final RowFrame frame;

    /**
     * What is wanted.
     *
     * @param spacingM most distance between rows
     * @param edgeM    distance that lines keep from the edge and from what stands in the bed; half of it where the bed is too
     *                 narrow; more than the step of the lattice
     * @param mostM    most length of a line
     * @param lattice  that corners are rounded to
     */
    public record Demand(double spacingM, double edgeM, double mostM, Lattice lattice) {}

    private DripLayout(Geometry open, RowFrame frame, Demand demand) {
        this.open = open;
        this.frame = frame;
        this.demand = demand;
    }

    /**
     * The lines for a bed.
     *
     * @param above what lies or stands in the bed and must be left out
     * @return x0, y0, x1, y1, … of each line; none if the bed is too narrow
     */
    public static List<double[]> of(Region bed, List<Region> above, Demand demand) {
        Geometry open = OpenGround.of(bed, above);
        RowFrame frame = RowFrame.of(Rings.of(bed)[0]);
        DripLayout layout = new DripLayout(open, frame, demand);
        List<double[]> lines = layout.lines(demand.edgeM);
        return lines.isEmpty() ? layout.lines(demand.edgeM / 2) : lines;
    }

    private List<double[]> lines(double edgeM) {
        Geometry within = inset(open, edgeM);
        List<EdgeRing> edge = new ArrayList<>();
        for (double[] ring : turned(within)) {
            edge.add(new EdgeRing(edge.size(), ring));
        }
        List<DripRow> rows = RowLevels.of(turned(open), demand.spacingM, edgeM).rows(edge, LEAST_ROW_M);
        PreparedGeometry bounds = PreparedGeometryFactory.prepare(inset(open, edgeM - ROUNDING_M));
        List<double[]> lines = new ArrayList<>();
        for (Serpentine.Chain chain : Serpentine.of(edge, rows, demand.spacingM)) {
            List<RowEnd> path = DripPath.of(edge, rows, chain, (from, to) -> bounds.covers(line(List.of(from, to))));
            double[] measured = rounded(path, FLAT_RATIO * edgeM);
            if (measured.length >= 4) {
                lines.addAll(LineCuts.of(measured, demand.mostM, demand.lattice));
            }
        }
        return lines;
    }

    private static Geometry inset(Geometry ground, double byM) {
        var mitred = new BufferParameters();
        mitred.setJoinStyle(BufferParameters.JOIN_MITRE);
        return BufferOp.bufferOp(ground, -byM, mitred).norm();
    }

    private List<double[]> turned(Geometry ground) {
        List<double[]> rings = new ArrayList<>();
        for (int i = 0; i < ground.getNumGeometries(); i++) {
            if (ground.getGeometryN(i) instanceof Polygon piece && !piece.isEmpty()) {
                rings.add(frame.turned(OpenGround.flat(piece.getExteriorRing())));
                for (int hole = 0; hole < piece.getNumInteriorRing(); hole++) {
                    rings.add(frame.turned(OpenGround.flat(piece.getInteriorRingN(hole))));
                }
            }
        }
        return rings;
    }

    private LineString line(List<RowEnd> path) {
        return FACTORY.createLineString(path.stream()
                .map(end -> new Coordinate(frame.xM(end.uM(), end.vM()), frame.yM(end.uM(), end.vM())))
                .toArray(Coordinate[]::new));
    }

    /** On the lattice, without corners that hardly bend. */
    private double[] rounded(List<RowEnd> path, double flatM) {
        Coordinate[] corners =
                DouglasPeuckerSimplifier.simplify(line(path), flatM).getCoordinates();
        List<Coordinate> kept = new ArrayList<>();
        for (Coordinate corner : corners) {
            var near = new Coordinate(demand.lattice.near(corner.x, 0), demand.lattice.near(corner.y, 0));
            if (kept.isEmpty() || !kept.get(kept.size() - 1).equals2D(near)) {
                kept.add(near);
            }
        }
        if (kept.size() < 2) {
            return new double[0];
        }
        Geometry straight = DouglasPeuckerSimplifier.simplify(
                FACTORY.createLineString(kept.toArray(Coordinate[]::new)), ROUNDING_M);
        double[] flat = new double[2 * straight.getNumPoints()];
        for (int i = 0; i < flat.length / 2; i++) {
            flat[2 * i] = straight.getCoordinates()[i].x;
            flat[2 * i + 1] = straight.getCoordinates()[i].y;
        }
        return flat;
    }
}
