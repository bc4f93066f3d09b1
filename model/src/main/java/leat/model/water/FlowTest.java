package leat.model.water;

import leat.model.fault.Require;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;

/**
 * What was measured at the source with the tap open.
 *
 * @param flow     that ran, more than 0
 * @param residual pressure that was left while it ran
 */
public record FlowTest(Flow flow, Pressure residual) {

    public FlowTest {
        Require.moreThan("flow test", "flow", flow, Flow.ZERO);
        Require.atLeast("flow test", "residual", residual, Pressure.ZERO);
    }
}
