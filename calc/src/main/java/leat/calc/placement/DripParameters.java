package leat.calc.placement;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;

/**
 * Which drip lines are laid in beds that are watered by drip, and how.
 *
 * @param family key of a head family that makes drip lines; default 2.3 L/h emitters each 0.3 m
 * @param rows   most distance between rows, at least 0.1 m; empty, the default, takes {@link leat.calc.DripSpacing} of the soil
 * @param edge   distance of the ends of rows from the edge of the bed and from what stands in it, at least 0.08 m; half of it where a bed
 *               is too narrow. Default 0.1 m, common practice, no source
 * @param mostFlow most flow of one line, more than 0; longer lines are cut. Default 9.5 L/min: makers' tables for tube of 17 mm outside allow
 *               at 1.7 bar, the reference pressure of the families, 77 m with emitters of 2.3 L/h and 52 m with 3.4 L/h each 0.3 m,
 *               both 9.8 L/min; common practice
 */
public record DripParameters(String family, Optional<Length> rows, Length edge, Flow mostFlow) {

    private static final Length LEAST_ROWS = Length.metres(0.1);

    /** Half of it must be more than places are moved when they are rounded. */
    private static final Length LEAST_EDGE = Length.metres(0.08);

    public DripParameters {
        Require.name("drip lines", "family", family);
        rows.ifPresent(apart -> Require.atLeast("drip lines", "rows", apart, LEAST_ROWS));
        Require.atLeast("drip lines", "edge", edge, LEAST_EDGE);
        Require.moreThan("drip lines", "mostFlow", mostFlow, Flow.ZERO);
    }

    public static DripParameters defaults() {
        return new DripParameters("dripline-2_3-0_3", Optional.empty(), Length.metres(0.1), Flow.litresPerMinute(9.5));
    }

    public DripParameters withFamily(String key) {
        return new DripParameters(key, rows, edge, mostFlow);
    }

    public DripParameters withRows(Length apart) {
        return new DripParameters(family, Optional.of(apart), edge, mostFlow);
    }

    public DripParameters withEdge(Length newEdge) {
        return new DripParameters(family, rows, newEdge, mostFlow);
    }

    public DripParameters withMostFlow(Flow flow) {
        return new DripParameters(family, rows, edge, flow);
    }
}
