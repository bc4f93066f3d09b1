package leat.bench;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;

/** A geometry library's way: prepared sector polygons in a tree, each cell centre asked of those near it. */
final class CoverageJtsRival extends CoverageByCells {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double STEP_DEG = 2;

    private record Wetted(int head, PreparedGeometry sector) {}

    CoverageJtsRival(CoverageInstance instance) {
        super(instance);
    }

    @Override
    public String name() {
        return "jts-prepared-by-cell";
    }

    @Override
    void fill() {
        PreparedGeometry prepared = PreparedGeometryFactory.prepare(lawnPolygon());
        var tree = new STRtree();
        for (int head = 0; head < instance.heads(); head++) {
            Geometry sector = sector(head);
            tree.insert(sector.getEnvelopeInternal(), new Wetted(head, PreparedGeometryFactory.prepare(sector)));
        }
        for (int cell = 0; cell < lawn.length; cell++) {
            double x = instance.centreM(cell % instance.columns());
            double y = instance.centreM(cell / instance.columns());
            Point centre = FACTORY.createPoint(new Coordinate(x, y));
            lawn[cell] = prepared.contains(centre);
            if (!lawn[cell]) {
                continue;
            }
            for (Object found : tree.query(centre.getEnvelopeInternal())) {
                Wetted wetted = (Wetted) found;
                if (wetted.sector.covers(centre)) {
                    double distance = Math.hypot(x - instance.xM()[wetted.head], y - instance.yM()[wetted.head]);
                    reach[cell]++;
                    depth[cell] +=
                            depthAtHead(wetted.head) * Math.max(0, 1 - distance / instance.radiusM()[wetted.head]);
                }
            }
        }
    }

    private Geometry lawnPolygon() {
        List<Coordinate> corners = new ArrayList<>();
        for (int i = 0; i < instance.lawnM().length; i += 2) {
            corners.add(new Coordinate(instance.lawnM()[i], instance.lawnM()[i + 1]));
        }
        return polygon(corners);
    }

    /** A polygon of the same area as the sector. */
    private Geometry sector(int head) {
        double sweep = instance.sweepDeg()[head];
        int steps = (int) Math.ceil(sweep / STEP_DEG);
        double step = Math.toRadians(sweep) / steps;
        double radius = instance.radiusM()[head] * Math.sqrt(step / Math.sin(step));
        List<Coordinate> corners = new ArrayList<>();
        for (int i = 0; i <= steps && (i < steps || sweep < 360); i++) {
            double angle = Math.toRadians(instance.startDeg()[head]) + i * step;
            corners.add(new Coordinate(
                    instance.xM()[head] + radius * Math.cos(angle), instance.yM()[head] + radius * Math.sin(angle)));
        }
        if (sweep < 360) {
            corners.add(new Coordinate(instance.xM()[head], instance.yM()[head]));
        }
        return polygon(corners);
    }

    private static Geometry polygon(List<Coordinate> corners) {
        corners.add(corners.get(0).copy());
        return FACTORY.createPolygon(corners.toArray(new Coordinate[0]));
    }
}
