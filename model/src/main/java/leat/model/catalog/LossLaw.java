package leat.model.catalog;

import leat.model.fault.Require;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;

/**
 * Pressure lost in a device: {@code fixed + coefficient · Q^exponent} while water flows, nothing while it stands.
 *
 * @param fixed       share that does not depend on the flow, such as the spring of a check; at least 0
 * @param coefficient in Pa per (m³/s)^exponent, at least 0
 * @param exponent    of the flow, more than 0
 */
public record LossLaw(Pressure fixed, double coefficient, double exponent) {

    public LossLaw {
        Require.atLeast("loss law", "fixed", fixed, Pressure.ZERO);
        Require.finite("loss law", "coefficient", coefficient);
        Require.atLeast("loss law", "coefficient", coefficient, 0.0);
        Require.finite("loss law", "exponent", exponent);
        Require.moreThan("loss law", "exponent", exponent, 0.0);
    }

    public Pressure lossAt(Flow flow) {
        if (flow.si() <= 0) {
            return Pressure.ZERO;
        }
        return fixed.plus(new Pressure(coefficient * Math.pow(flow.si(), exponent)));
    }
}
