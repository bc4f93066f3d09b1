package leat.architecture.planted.neighbours.calc.coverage.internal;

public final class Kernel {

    private Kernel() {}

    public static double areaM2(double radiusM) {
        return Math.PI * radiusM * radiusM;
    }
}
