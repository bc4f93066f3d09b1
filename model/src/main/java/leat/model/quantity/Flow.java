package leat.model.quantity;

import leat.model.fault.Require;

/** A volume of water in a time. Negative flow runs backwards. */
public record Flow(double cubicMetresPerSecond) implements Quantity, Comparable<Flow> {

    public static final Flow ZERO = new Flow(0);

    private static final double IN_LITRES_PER_SECOND = 0.001;

    private static final double IN_LITRES_PER_MINUTE = 0.001 / 60;

    private static final double IN_GPM = 231 * 0.0254 * 0.0254 * 0.0254 / 60;

    public Flow {
        Require.finite("flow", "cubicMetresPerSecond", cubicMetresPerSecond);
        cubicMetresPerSecond += 0.0; // turns -0.0 into 0.0, which would be equal in value and unequal as a record
    }

    public static Flow cubicMetresPerSecond(double cubicMetresPerSecond) {
        return new Flow(cubicMetresPerSecond);
    }

    public static Flow litresPerSecond(double litresPerSecond) {
        return new Flow(litresPerSecond * IN_LITRES_PER_SECOND);
    }

    public static Flow litresPerMinute(double litresPerMinute) {
        return new Flow(litresPerMinute * IN_LITRES_PER_MINUTE);
    }

    public static Flow gpm(double gpm) {
        return new Flow(gpm * IN_GPM);
    }

    public double inLitresPerSecond() {
        return cubicMetresPerSecond / IN_LITRES_PER_SECOND;
    }

    public double inLitresPerMinute() {
        return cubicMetresPerSecond / IN_LITRES_PER_MINUTE;
    }

    public double inGpm() {
        return cubicMetresPerSecond / IN_GPM;
    }

    /** Reads text such as {@code 14 gpm}; see {@link Units#parse}. */
    public static Flow parse(String text) {
        return (Flow) Units.parse(Dimension.FLOW, text);
    }

    public Flow plus(Flow other) {
        return new Flow(cubicMetresPerSecond + other.cubicMetresPerSecond);
    }

    public Flow minus(Flow other) {
        return new Flow(cubicMetresPerSecond - other.cubicMetresPerSecond);
    }

    public Flow times(double factor) {
        return new Flow(cubicMetresPerSecond * factor);
    }

    @Override
    public double si() {
        return cubicMetresPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.FLOW;
    }

    @Override
    public int compareTo(Flow other) {
        return Double.compare(cubicMetresPerSecond, other.cubicMetresPerSecond);
    }

    @Override
    public String toString() {
        return Units.write(this, UnitSystem.METRIC);
    }
}
