package leat.model.water;

import java.util.Optional;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.SourceId;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;

/**
 * A pump on a well, a tank or a pond. Its curve is the parabola with its top at no flow through the duty point.
 *
 * @param shutOff      pressure at the outlet against a closed valve
 * @param duty         flow at the duty point, more than 0
 * @param dutyPressure pressure at the outlet there, less than shut-off
 */
public record Pump(SourceId id, Point at, Pressure shutOff, Flow duty, Pressure dutyPressure, Optional<String> meter)
        implements Source {

    public Pump {
        Require.present("pump", "id", id);
        String thing = "pump " + id;
        Require.present(thing, "at", at);
        Require.moreThan(thing, "shutOff", shutOff, Pressure.ZERO);
        Require.moreThan(thing, "duty", duty, Flow.ZERO);
        Require.moreThan(thing, "dutyPressure", dutyPressure, Pressure.ZERO);
        Require.present(thing, "meter", meter);
        meter.ifPresent(key -> Require.name(thing, "meter", key));
        if (dutyPressure.compareTo(shutOff) >= 0) {
            throw new InvalidValueException(thing, "dutyPressure", dutyPressure.toString(), "less than shut-off");
        }
    }

    @Override
    public Pressure staticPressure() {
        return shutOff;
    }

    @Override
    public Pressure pressureAt(Flow drawn) {
        double share = Math.max(0, drawn.si()) / duty.si();
        return shutOff.minus(shutOff.minus(dutyPressure).times(share * share));
    }

    @Override
    public Water water() {
        return Water.NON_DRINKING;
    }
}
