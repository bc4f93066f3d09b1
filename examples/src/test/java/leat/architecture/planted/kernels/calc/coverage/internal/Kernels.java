package leat.architecture.planted.kernels.calc.coverage.internal;

public final class Kernels {

    private Kernels() {}

    public static double badRadius(double radius) {
        return radius;
    }

    public static double badArrays(double[] flow, int at) {
        return flow[at];
    }

    public static double badEnglish(double pressurePsi) {
        return pressurePsi;
    }

    public static double goodUnits(
            double radiusM, double[] flowM3PerS, double x, double frictionFactor, double turnRad) {
        return radiusM + flowM3PerS[0] + x + frictionFactor + turnRad;
    }

    static double goodInside(double q) {
        return q;
    }
}
