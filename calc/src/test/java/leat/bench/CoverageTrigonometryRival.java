package leat.bench;

/** The first thing one writes: every cell against every head, distance and angle. */
final class CoverageTrigonometryRival extends CoverageByCells {

    CoverageTrigonometryRival(CoverageInstance instance) {
        super(instance);
    }

    @Override
    public String name() {
        return "java-every-cell-trigonometry";
    }

    @Override
    void fill() {
        findLawnByCrossings();
        for (int cell = 0; cell < lawn.length; cell++) {
            if (!lawn[cell]) {
                continue;
            }
            double x = instance.centreM(cell % instance.columns());
            double y = instance.centreM(cell / instance.columns());
            for (int head = 0; head < instance.heads(); head++) {
                double dx = x - instance.xM()[head];
                double dy = y - instance.yM()[head];
                double distance = Math.hypot(dx, dy);
                if (distance > instance.radiusM()[head]) {
                    continue;
                }
                double angle = Math.toDegrees(Math.atan2(dy, dx)) - instance.startDeg()[head];
                angle -= 360 * Math.floor(angle / 360);
                if (angle <= instance.sweepDeg()[head]) {
                    reach[cell]++;
                    depth[cell] += depthAtHead(head) * (1 - distance / instance.radiusM()[head]);
                }
            }
        }
    }
}
