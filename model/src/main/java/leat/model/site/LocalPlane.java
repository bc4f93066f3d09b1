package leat.model.site;

import java.util.List;
import leat.model.geometry.Point;

/**
 * The plane that fits spot levels best around a point: least squares weighted by one over the fourth power of the
 * distance (McLain 1974). Meets each spot and each plane exactly.
 */
final class LocalPlane {

    /** A square nanometre: nearer than that a point is at the spot level. */
    private static final double SAME_PLACE_M2 = 1e-18;

    /** Spots whose spread across their main direction is under a thousandth of that along it lie on a line. */
    private static final double ON_A_LINE = 1e-6;

    private LocalPlane() {}

    /**
     * Level at the point; 0 without spots, level ground with one, a slope along their line if all lie on one. Beyond the
     * outermost spots the slope goes on, at most as far above and below them as they differ among themselves.
     */
    static double levelM(List<SpotLevel> spots, Point point) {
        double nearestM2 = Double.POSITIVE_INFINITY;
        double leastM = Double.POSITIVE_INFINITY;
        double mostM = Double.NEGATIVE_INFINITY;
        for (SpotLevel spot : spots) {
            double squared = squaredM2(spot, point);
            if (squared < SAME_PLACE_M2) {
                return spot.level().metres();
            }
            nearestM2 = Math.min(nearestM2, squared);
            leastM = Math.min(leastM, spot.level().metres());
            mostM = Math.max(mostM, spot.level().metres());
        }
        double rangeM = mostM - leastM;
        return spots.isEmpty() ? 0 : Math.max(leastM - rangeM, Math.min(mostM + rangeM, fitM(spots, point, nearestM2)));
    }

    private static double fitM(List<SpotLevel> spots, Point point, double nearestM2) {
        double weights = 0;
        double meanX = 0;
        double meanY = 0;
        double meanZ = 0;
        for (SpotLevel spot : spots) {
            double weight = weight(spot, point, nearestM2);
            weights += weight;
            meanX += weight * spot.at().xM();
            meanY += weight * spot.at().yM();
            meanZ += weight * spot.level().metres();
        }
        meanX /= weights;
        meanY /= weights;
        meanZ /= weights;
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double xz = 0;
        double yz = 0;
        for (SpotLevel spot : spots) {
            double weight = weight(spot, point, nearestM2);
            double dx = spot.at().xM() - meanX;
            double dy = spot.at().yM() - meanY;
            double dz = spot.level().metres() - meanZ;
            xx += weight * dx * dx;
            xy += weight * dx * dy;
            yy += weight * dy * dy;
            xz += weight * dx * dz;
            yz += weight * dy * dz;
        }
        double east = point.xM() - meanX;
        double north = point.yM() - meanY;
        double both = xx + yy;
        double determinant = xx * yy - xy * xy;
        if (both == 0) {
            return meanZ;
        }
        if (determinant <= ON_A_LINE * both * both) {
            return meanZ + (xz * east + yz * north) / both;
        }
        return meanZ + ((xz * yy - yz * xy) * east + (yz * xx - xz * xy) * north) / determinant;
    }

    /** Against that of the nearest spot, so that no weight overflows. */
    private static double weight(SpotLevel spot, Point point, double nearestM2) {
        double share = nearestM2 / squaredM2(spot, point);
        return share * share;
    }

    private static double squaredM2(SpotLevel spot, Point point) {
        double dx = point.xM() - spot.at().xM();
        double dy = point.yM() - spot.at().yM();
        return dx * dx + dy * dy;
    }
}
