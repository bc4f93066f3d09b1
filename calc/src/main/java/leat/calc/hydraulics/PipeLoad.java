package leat.calc.hydraulics;

import leat.model.fault.Require;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;
import leat.model.quantity.Velocity;

/**
 * What runs through a pipe.
 *
 * @param flow     at its upstream end, where it is greatest
 * @param velocity there
 * @param loss     of pressure by friction and fittings from its upstream end to where the last water leaves it; without
 *                 rise or fall
 * @param inlet    pressure at its upstream end, at the level of the finished grade
 */
public record PipeLoad(Flow flow, Velocity velocity, Pressure loss, Pressure inlet) {

    public PipeLoad {
        Require.present("pipe load", "flow", flow);
        Require.present("pipe load", "velocity", velocity);
        Require.present("pipe load", "loss", loss);
        Require.present("pipe load", "inlet", inlet);
    }
}
