package leat.model.power;

import leat.model.fault.Require;
import leat.model.id.TransformerId;
import leat.model.quantity.Voltage;

/**
 * From what a lamp of low voltage takes its power, and with what voltage it works.
 *
 * @param least below it, it is dark or flickers
 * @param most  above it, it does not last; more than the least
 */
public record LampSupply(TransformerId transformer, Voltage least, Voltage most) {

    /** Lamps for 12 V work from 10.8 V to 15 V: shares of their voltage; common practice, no source. */
    private static final double USUAL_LEAST_SHARE = 0.9;

    private static final double USUAL_MOST_SHARE = 1.25;

    public LampSupply {
        Require.present("lamp", "transformer", transformer);
        Require.moreThan("lamp", "least voltage", least, Voltage.ZERO);
        Require.moreThan("lamp", "most voltage", most, least);
    }

    /** Lamps that work with 90 % to 125 % of that voltage; common practice, no source. */
    public static LampSupply usual(TransformerId transformer, Voltage rated) {
        return new LampSupply(
                transformer, new Voltage(rated.si() * USUAL_LEAST_SHARE), new Voltage(rated.si() * USUAL_MOST_SHARE));
    }
}
