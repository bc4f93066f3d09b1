package leat.calc.internal.cells;

import java.util.List;
import leat.model.geometry.Point;
import leat.model.geometry.Region;

/** Regions as the arrays that the kernels read: for each ring x0, y0, x1, y1, … */
public final class Rings {

    private Rings() {}

    public static double[][] of(Region region) {
        return region.rings().stream().map(Rings::flat).toArray(double[][]::new);
    }

    private static double[] flat(List<Point> ring) {
        double[] flat = new double[2 * ring.size()];
        for (int i = 0; i < ring.size(); i++) {
            flat[2 * i] = ring.get(i).xM();
            flat[2 * i + 1] = ring.get(i).yM();
        }
        return flat;
    }
}
