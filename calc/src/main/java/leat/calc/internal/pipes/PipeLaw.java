package leat.calc.internal.pipes;

/**
 * Loss of head in a pipe and its fittings, and the speed of the water.
 * <p>
 * Friction by Hazen and Williams in SI form: h = 10.67 L Q^1.852 / (C^1.852 d^4.8704). The constant 10.67 follows from
 * v = 0.849 C R^0.63 S^0.54 to its three figures. For water at about 15 °C in full turbulent flow; at trickles it gives
 * too little loss.
 */
public final class PipeLaw {

    /** Standard gravity, exact by definition. */
    public static final double GRAVITY_M_PER_S2 = 9.80665;

    /** Weight of a cubic metre of water at 15 °C, 999.1 kg/m³; pressure is head times this. */
    public static final double PASCALS_PER_M = 999.1 * GRAVITY_M_PER_S2;

    private static final double HAZEN_WILLIAMS_SI = 10.67;
    private static final double FLOW_EXPONENT = 1 + FlowPower.EXPONENT;
    private static final double BORE_EXPONENT = 4.8704;

    private PipeLaw() {}

    /** Friction coefficient r of a pipe: loss of head in metres is r · Q^1.852. */
    public static double frictionCoefficient(double lengthM, double boreM, double hazenWilliamsC) {
        return HAZEN_WILLIAMS_SI
                * lengthM
                / (StrictMath.pow(hazenWilliamsC, FLOW_EXPONENT) * StrictMath.pow(boreM, BORE_EXPONENT));
    }

    /** Coefficient of fittings: loss of head in metres is the coefficient times Q², from h = K v²/(2g). */
    public static double minorCoefficient(double lossFactorK, double boreM) {
        double areaM2 = areaM2(boreM);
        return lossFactorK / (2 * GRAVITY_M_PER_S2 * areaM2 * areaM2);
    }

    /** Loss of head in metres in a pipe with fittings; changes its sign with the flow. */
    public static double lossM(double frictionCoefficient, double minorCoefficient, double flowM3PerS) {
        double magnitude = Math.abs(flowM3PerS);
        return (frictionCoefficient * FlowPower.of(magnitude) + minorCoefficient * magnitude) * flowM3PerS;
    }

    public static double velocityMPerS(double flowM3PerS, double boreM) {
        return flowM3PerS / areaM2(boreM);
    }

    private static double areaM2(double boreM) {
        return Math.PI * boreM * boreM / 4;
    }
}
