package leat.model.water;

import java.util.Optional;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.SourceId;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;

/**
 * A pump on a well, a tank or a pond. Its curve is the parabola with its top at no flow through the duty point. What it
 * adds to the pressure of the water has to lift that water first.
 *
 * @param shutOff      what it adds against a closed valve
 * @param duty         flow at the duty point, more than 0
 * @param dutyPressure what it adds there, less than shut-off
 * @param lift         how far the lowest water that it draws lies below its outlet; below 0 where it lies above
 */
public record Pump(
        SourceId id, Point at, Pressure shutOff, Flow duty, Pressure dutyPressure, Length lift, Optional<String> meter)
        implements Source {

    public Pump {
        Require.present("pump", "id", id);
        String thing = "pump " + id;
        Require.present(thing, "at", at);
        Require.moreThan(thing, "shutOff", shutOff, Pressure.ZERO);
        Require.moreThan(thing, "duty", duty, Flow.ZERO);
        Require.moreThan(thing, "dutyPressure", dutyPressure, Pressure.ZERO);
        Require.present(thing, "lift", lift);
        Require.present(thing, "meter", meter);
        meter.ifPresent(key -> Require.name(thing, "meter", key));
        if (dutyPressure.compareTo(shutOff) >= 0) {
            throw new InvalidValueException(thing, "dutyPressure", dutyPressure.toString(), "less than shut-off");
        }
    }

    /** A pump whose pressures are those at its outlet, whatever it lifts. */
    public Pump(SourceId id, Point at, Pressure shutOff, Flow duty, Pressure dutyPressure, Optional<String> meter) {
        this(id, at, shutOff, duty, dutyPressure, Length.ZERO, meter);
    }

    /** Below zero for a pump that is too weak to lift its water. */
    @Override
    public Pressure staticPressure() {
        return shutOff.minus(lifting());
    }

    /** The pressure that the lift takes. */
    public Pressure lifting() {
        return new Pressure(lift.metres() * Tank.PASCALS_PER_METRE);
    }

    @Override
    public Pressure pressureAt(Flow drawn) {
        double share = Math.max(0, drawn.si()) / duty.si();
        return staticPressure().minus(shutOff.minus(dutyPressure).times(share * share));
    }

    @Override
    public Water water() {
        return Water.NON_DRINKING;
    }
}
