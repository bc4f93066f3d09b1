package leat.calc.internal.cells;

import java.util.Arrays;
import java.util.Random;

/** A lawn with heads, made from a seed or by hand, and ways to move it about. Angles are degrees counter-clockwise from east. */
final class Scene {

    record HeadAt(double xM, double yM, double radiusM, double startDeg, double sweepDeg, double rateMPerS) {}

    final double[][] ringsM;
    final HeadAt[] heads;
    final DepthCurve profile;

    Scene(double[][] ringsM, DepthCurve profile, HeadAt... heads) {
        this.ringsM = ringsM;
        this.heads = heads;
        this.profile = profile;
    }

    static Scene of(double[] ringM, HeadAt... heads) {
        return new Scene(new double[][] {ringM}, DepthCurve.WEDGE, heads);
    }

    /** A star-shaped lawn of about 20 m with a hole, and up to 20 heads in and around it. */
    static Scene random(long seed) {
        var random = new Random(seed);
        double[] outer = star(random, 5 + random.nextInt(12), 5, 12);
        double[] hole = star(random, 3 + random.nextInt(6), 1, 3);
        HeadAt[] heads = new HeadAt[1 + random.nextInt(20)];
        for (int i = 0; i < heads.length; i++) {
            double sweep = random.nextInt(4) == 0 ? 360 : random.nextDouble(5, 360);
            heads[i] = new HeadAt(
                    random.nextDouble(-12, 12),
                    random.nextDouble(-12, 12),
                    random.nextDouble(2, 9),
                    random.nextDouble(-400, 800),
                    sweep,
                    random.nextDouble(1e-6, 1e-5));
        }
        DepthCurve bent = DepthCurve.of(new double[] {0, 0.3, 0.75, 1}, new double[] {1, 0.8, 1.2, 0});
        return new Scene(new double[][] {outer, hole}, random.nextBoolean() ? DepthCurve.WEDGE : bent, heads);
    }

    private static double[] star(Random random, int corners, double leastM, double mostM) {
        double[] ring = new double[2 * corners];
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            double radius = random.nextDouble(leastM, mostM);
            ring[2 * i] = radius * Math.cos(angle);
            ring[2 * i + 1] = radius * Math.sin(angle);
        }
        return ring;
    }

    /** The same scene turned by quarter turns about the origin, then shifted. */
    Scene moved(int quarters, double eastM, double northM) {
        double[][] rings = new double[ringsM.length][];
        for (int i = 0; i < rings.length; i++) {
            rings[i] = ringsM[i].clone();
            for (int k = 0; k < rings[i].length; k += 2) {
                rings[i][k] = turnedX(quarters, ringsM[i][k], ringsM[i][k + 1]) + eastM;
                rings[i][k + 1] = turnedX(quarters - 1, ringsM[i][k], ringsM[i][k + 1]) + northM;
            }
        }
        HeadAt[] moved = Arrays.stream(heads)
                .map(h -> new HeadAt(
                        turnedX(quarters, h.xM, h.yM) + eastM,
                        turnedX(quarters - 1, h.xM, h.yM) + northM,
                        h.radiusM,
                        h.startDeg + 90 * quarters,
                        h.sweepDeg,
                        h.rateMPerS))
                .toArray(HeadAt[]::new);
        return new Scene(rings, profile, moved);
    }

    private static double turnedX(int quarters, double x, double y) {
        return switch (Math.floorMod(quarters, 4)) {
            case 0 -> x;
            case 1 -> -y;
            case 2 -> -x;
            default -> y;
        };
    }

    /** All lengths multiplied, rates kept. */
    Scene scaled(double factor) {
        double[][] rings = new double[ringsM.length][];
        for (int i = 0; i < rings.length; i++) {
            rings[i] = Arrays.stream(ringsM[i]).map(length -> length * factor).toArray();
        }
        HeadAt[] scaled = Arrays.stream(heads)
                .map(h -> new HeadAt(
                        h.xM * factor, h.yM * factor, h.radiusM * factor, h.startDeg, h.sweepDeg, h.rateMPerS))
                .toArray(HeadAt[]::new);
        return new Scene(rings, profile, scaled);
    }

    HeadArrays arrays() {
        var arrays = new HeadArrays(heads.length);
        for (int i = 0; i < heads.length; i++) {
            set(arrays, i, heads[i]);
        }
        return arrays;
    }

    void set(HeadArrays arrays, int i, HeadAt head) {
        arrays.place(i, head.xM, head.yM);
        arrays.radius(i, head.radiusM);
        arrays.arc(i, Math.toRadians(head.startDeg), Math.toRadians(head.sweepDeg));
        arrays.meanRate(i, head.rateMPerS);
        arrays.profile(i, profile);
    }

    /** A scene laid on a grid and measured. */
    static final class Measured {
        final CellGrid grid;
        final CellRuns surface = new CellRuns();
        final HeadArrays heads;
        final Wetting wetting;
        final Evenness evenness = new Evenness();

        Measured(Scene scene, CellGrid grid) {
            this.grid = grid;
            heads = scene.arrays();
            wetting = new Wetting(grid, heads);
            new RegionRaster().rasterise(grid, scene.ringsM, surface);
            wetting.wetAll();
            evenness.measure(wetting, surface);
        }

        double shareReachedByTwo() {
            return (double) evenness.cellsReachedByTwo() / evenness.cells();
        }

        int reach(int row, int column) {
            int[] reach = new int[grid.columns()];
            wetting.reach(row, reach);
            return reach[column];
        }
    }
}
