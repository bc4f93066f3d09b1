package leat.model.catalog;

import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;

/**
 * How far and how much a head throws.
 *
 * @param radius         at reference pressure, more than 0
 * @param leastRadius    to which the builder may turn it down; more than 0, at most {@code radius}
 * @param flow           at reference pressure and full circle; of one metre of a line
 * @param flowExponent   of the pressure; 0.5 for a plain nozzle, 0 for one that compensates
 * @param radiusExponent of the pressure, 0 to 1
 * @param profile        catalogue key of the depth over the radius
 */
public record Jet(
        Length radius,
        Length leastRadius,
        Flow flow,
        FlowRule rule,
        double flowExponent,
        double radiusExponent,
        String profile) {

    public Jet {
        Require.moreThan("jet", "radius", radius, Length.ZERO);
        Require.moreThan("jet", "leastRadius", leastRadius, Length.ZERO);
        Require.moreThan("jet", "flow", flow, Flow.ZERO);
        Require.present("jet", "rule", rule);
        Require.name("jet", "profile", profile);
        exponent("flowExponent", flowExponent);
        exponent("radiusExponent", radiusExponent);
        if (leastRadius.compareTo(radius) > 0) {
            throw new InvalidValueException(
                    "jet", "leastRadius", leastRadius.toString(), "at most the radius " + radius);
        }
    }

    private static void exponent(String field, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new InvalidValueException("jet", field, String.valueOf(value), "0 to 1");
        }
    }
}
