package leat.model.water;

import java.util.Optional;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.SourceId;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;

/**
 * A public supply. With a flow test the pressure falls with the flow to the power 1.85, as fire-flow tests are read
 * (NFPA 291: flow goes with the pressure drop to the power 0.54); without one it does not fall, which flatters it.
 *
 * @param staticPressure at the outlet, more than 0
 */
public record Mains(SourceId id, Point at, Pressure staticPressure, Optional<FlowTest> flowTest, Optional<String> meter)
        implements Source {

    /** The exponent of Hazen and Williams, 1 / 0.54. */
    private static final double EXPONENT = 1.852;

    public Mains {
        Require.present("mains", "id", id);
        String thing = "mains " + id;
        Require.present(thing, "at", at);
        Require.moreThan(thing, "staticPressure", staticPressure, Pressure.ZERO);
        Require.present(thing, "flowTest", flowTest);
        Require.present(thing, "meter", meter);
        meter.ifPresent(key -> Require.name(thing, "meter", key));
        if (flowTest.isPresent() && flowTest.get().residual().compareTo(staticPressure) >= 0) {
            throw new InvalidValueException(
                    thing, "flowTest.residual", flowTest.get().residual().toString(), "less than the static pressure");
        }
    }

    @Override
    public Pressure pressureAt(Flow drawn) {
        if (flowTest.isEmpty()) {
            return staticPressure;
        }
        FlowTest test = flowTest.get();
        double share = Math.max(0, drawn.si()) / test.flow().si();
        return staticPressure.minus(staticPressure.minus(test.residual()).times(Math.pow(share, EXPONENT)));
    }

    @Override
    public Water water() {
        return Water.DRINKING;
    }
}
