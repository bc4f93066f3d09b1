package leat.calc.wiring.internal;

/** Voltage on the way to a valve and back: U = l · (Iv·rv + Ic·rc), the valve's own wire and the common wire. */
public final class ValveWires {

    private ValveWires() {}

    public static double dropV(
            double oneWayM, double valveA, double valveOhmPerM, double commonA, double commonOhmPerM) {
        return oneWayM * perMetreV(valveA, valveOhmPerM, commonA, commonOhmPerM);
    }

    /** The way on which exactly that voltage is lost; infinite without current. */
    public static double longestM(
            double allowedV, double valveA, double valveOhmPerM, double commonA, double commonOhmPerM) {
        return allowedV / perMetreV(valveA, valveOhmPerM, commonA, commonOhmPerM);
    }

    private static double perMetreV(double valveA, double valveOhmPerM, double commonA, double commonOhmPerM) {
        return valveA * valveOhmPerM + commonA * commonOhmPerM;
    }
}
