package leat.calc.hydraulics;

import java.util.ArrayList;
import java.util.List;
import leat.calc.internal.pipes.PipeLaw;
import leat.model.finding.Citation;
import leat.model.finding.Standing;
import leat.model.finding.Step;
import leat.model.water.FlowTest;
import leat.model.water.Mains;
import leat.model.water.Pump;
import leat.model.water.Source;

/** How the pressure at a source's outlet falls while water is drawn, as if it were lost in a pipe behind it. */
final class SourceLaw {

    private static final double HAZEN_WILLIAMS = 1.852;

    private SourceLaw() {}

    static Link link(Source source, double elevationM) {
        if (source instanceof Mains mains && mains.flowTest().isPresent()) {
            FlowTest test = mains.flowTest().get();
            double fallM =
                    metres(mains.staticPressure().pascals() - test.residual().pascals());
            return link(
                    source, elevationM, fallM / StrictMath.pow(test.flow().si(), HAZEN_WILLIAMS), 0, citation(source));
        }
        if (source instanceof Pump pump) {
            double fallM = metres(pump.shutOff().pascals() - pump.dutyPressure().pascals());
            return link(
                    source,
                    elevationM,
                    0,
                    fallM / (pump.duty().si() * pump.duty().si()),
                    citation(source));
        }
        return link(source, elevationM, 0, 0, citation(source));
    }

    static String formula(Source source) {
        return source instanceof Mains
                ? "(static - residual) · (Q / Q of the test)^1.852"
                : source instanceof Pump ? "(shut-off - duty pressure) · (Q / duty flow)²" : "none";
    }

    static List<Step.Input> inputs(Source source) {
        List<Step.Input> inputs = new ArrayList<>();
        if (source instanceof Mains mains) {
            inputs.add(new Step.Input("static", mains.staticPressure()));
            mains.flowTest().ifPresent(test -> {
                inputs.add(new Step.Input("residual", test.residual()));
                inputs.add(new Step.Input("Q of the test", test.flow()));
            });
        } else if (source instanceof Pump pump) {
            inputs.add(new Step.Input("shut-off", pump.shutOff()));
            inputs.add(new Step.Input("duty pressure", pump.dutyPressure()));
            inputs.add(new Step.Input("duty flow", pump.duty()));
        }
        return inputs;
    }

    private static Link link(Source source, double elevationM, double friction, double square, Citation citation) {
        return new Link(0, Link.Kind.SOURCE, source.id(), elevationM, 0, 0, friction, square, 0, 0, 2, citation);
    }

    private static Citation citation(Source source) {
        if (source instanceof Mains) {
            return new Citation(
                    "NFPA 291, flow goes with the fall in pressure to the power 0.54", Standing.FROM_MEMORY);
        }
        return new Citation(
                source instanceof Pump ? "parabola through shut-off and duty point" : "height of the water in the tank",
                Standing.COMMON_PRACTICE);
    }

    static double metres(double pascals) {
        return pascals / PipeLaw.PASCALS_PER_M;
    }
}
