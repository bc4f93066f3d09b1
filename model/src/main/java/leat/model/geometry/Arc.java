package leat.model.geometry;

import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.quantity.Angle;

/**
 * The directions that a head throws to.
 *
 * @param start bearing of the edge from which the arc runs clockwise; kept in [0, 360) degrees
 * @param sweep clockwise, more than 0 and at most 360 degrees
 */
public record Arc(Angle start, Angle sweep) {

    public static final Arc FULL = new Arc(Angle.ZERO, new Angle(360));

    public Arc {
        Require.present("arc", "start", start);
        Require.present("arc", "sweep", sweep);
        if (sweep.degrees() <= 0 || sweep.degrees() > 360) {
            throw new InvalidValueException("arc", "sweep", sweep.toString(), "more than 0 and at most 360 deg");
        }
        start = start.turned();
    }

    public static Arc degrees(double start, double sweep) {
        return new Arc(new Angle(start), new Angle(sweep));
    }

    public boolean isFull() {
        return sweep.degrees() == 360;
    }

    public Angle end() {
        return start.plus(sweep).turned();
    }

    /** Whether the arc holds that direction; on its two edges rounding decides. */
    public boolean holds(Angle bearing) {
        return isFull() || bearing.minus(start).turned().degrees() <= sweep.degrees();
    }
}
