package leat.calc.wiring.internal;

/** How many equal wires go into a conduit. */
public final class ConduitFill {

    private ConduitFill() {}

    /**
     * The greatest count that the limits allow; the limit for two is stricter than the one for more, so each count is
     * held against its own.
     *
     * @param oneFraction     share of the conduit that a single wire may take; two and more likewise
     * @param roundUpFraction from this fraction of a wire on, one more is allowed; 1 for never
     */
    public static int mostEqual(
            double conduitM2,
            double wireM2,
            double oneFraction,
            double twoFraction,
            double moreFraction,
            double roundUpFraction) {
        int many = whole(conduitM2 * moreFraction / wireM2, roundUpFraction);
        if (many >= 3) {
            return many;
        }
        if (whole(conduitM2 * twoFraction / wireM2, roundUpFraction) >= 2) {
            return 2;
        }
        return Math.min(1, whole(conduitM2 * oneFraction / wireM2, roundUpFraction));
    }

    private static int whole(double wires, double roundUpFraction) {
        return (int) Math.floor(wires + (1 - roundUpFraction) + ROUNDING);
    }

    /** Areas are printed with three or four digits: a count that falls short by less is reached. */
    private static final double ROUNDING = 1e-9;
}
