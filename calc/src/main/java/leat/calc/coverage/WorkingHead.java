package leat.calc.coverage;

import leat.model.fault.Require;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;

/**
 * What a head does at the pressure that it has.
 *
 * @param radius it reaches, 0 or more; {@link leat.model.catalog.HeadFamily#radius} gives it
 * @param flow   0 or more
 */
public record WorkingHead(Length radius, Flow flow) {

    public WorkingHead {
        Require.atLeast("working head", "radius", radius, Length.ZERO);
        Require.atLeast("working head", "flow", flow, Flow.ZERO);
    }
}
