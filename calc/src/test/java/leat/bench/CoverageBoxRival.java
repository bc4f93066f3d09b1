package leat.bench;

/** Careful Java: each head within its bounding box, edges by cross products, squared distances, no trigonometry by cell. */
final class CoverageBoxRival extends CoverageByCells {

    CoverageBoxRival(CoverageInstance instance) {
        super(instance);
    }

    @Override
    public String name() {
        return "java-bounding-box";
    }

    @Override
    void fill() {
        findLawnByCrossings();
        for (int head = 0; head < instance.heads(); head++) {
            addHead(head);
        }
    }

    private void addHead(int head) {
        double x = instance.xM()[head];
        double y = instance.yM()[head];
        double radius = instance.radiusM()[head];
        double start = Math.toRadians(instance.startDeg()[head]);
        double stop = start + Math.toRadians(instance.sweepDeg()[head]);
        double startX = Math.cos(start);
        double startY = Math.sin(start);
        double stopX = Math.cos(stop);
        double stopY = Math.sin(stop);
        boolean full = instance.sweepDeg()[head] >= 360;
        boolean convex = instance.sweepDeg()[head] <= 180;
        double atHead = depthAtHead(head);
        double cell = instance.cellM();
        int firstRow = Math.max(0, (int) ((y - radius) / cell));
        int lastRow = Math.min(instance.rows() - 1, (int) ((y + radius) / cell));
        int firstColumn = Math.max(0, (int) ((x - radius) / cell));
        int lastColumn = Math.min(instance.columns() - 1, (int) ((x + radius) / cell));
        for (int row = firstRow; row <= lastRow; row++) {
            double dy = instance.centreM(row) - y;
            for (int column = firstColumn; column <= lastColumn; column++) {
                double dx = instance.centreM(column) - x;
                double squared = dx * dx + dy * dy;
                if (squared > radius * radius) {
                    continue;
                }
                boolean afterStart = startX * dy - startY * dx >= 0;
                boolean beforeStop = stopX * dy - stopY * dx <= 0;
                if (full || (convex ? afterStart && beforeStop : afterStart || beforeStop)) {
                    int at = row * instance.columns() + column;
                    reach[at]++;
                    depth[at] += atHead * (1 - Math.sqrt(squared) / radius);
                }
            }
        }
    }
}
