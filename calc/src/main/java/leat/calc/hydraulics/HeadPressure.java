package leat.calc.hydraulics;

import leat.model.fault.Require;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;

/**
 * What a head gets.
 *
 * @param pressure at its inlet, at the level of the finished grade; negative where water would be sucked
 * @param flow     that it gives; 0 without pressure
 */
public record HeadPressure(Pressure pressure, Flow flow) {

    public HeadPressure {
        Require.present("head pressure", "pressure", pressure);
        Require.present("head pressure", "flow", flow);
    }
}
