package leat.architecture.planted.geometry.calc.coverage.internal;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

public final class Shapes {

    private Shapes() {}

    public static Geometry badReturn(Geometry shape) {
        return goodInside(shape);
    }

    public static int badParameter(List<Polygon> shapes) {
        return shapes.size();
    }

    public static <T extends Geometry> int badBound(List<T> shapes) {
        return shapes.size();
    }

    static Geometry goodInside(Geometry shape) {
        return shape;
    }
}
