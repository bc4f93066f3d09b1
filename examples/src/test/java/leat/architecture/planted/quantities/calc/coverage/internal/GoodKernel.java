package leat.architecture.planted.quantities.calc.coverage.internal;

public final class GoodKernel {

    private GoodKernel() {}

    public static double areaM2(double radiusM) {
        return Math.PI * radiusM * radiusM;
    }
}
