package leat.calc.hydraulics.internal;

import leat.calc.internal.pipes.FlowPower;

/**
 * The loops of a Newton step, each over parallel arrays with one entry a node (entry 0 is the source, entry i also
 * stands for the link that feeds node i). Heads in metres, flows in m³/s; nothing is allocated.
 * <p>
 * Loops without dependence between entries stand apart from the two that have it, so that the compiler can use vector
 * instructions.
 */
final class TreeSweeps {

    /** Stands for "no flow" where an orifice is closed, so that no loop has to ask. */
    static final double NO_FLOW = 1e-200;

    private TreeSweeps() {}

    /** Tangent of each link's loss at its flow: loss ≈ offset + slope · flow. */
    static void linkTangents(
            double[] friction,
            double[] flowPower,
            double[] flow,
            double[] deviceSlope,
            double[] deviceOffsetM,
            double[] slope,
            double[] offsetM) {
        for (int i = 1; i < flow.length; i++) {
            double resistance = friction[i] * flowPower[i];
            slope[i] = (1 + FlowPower.EXPONENT) * resistance + deviceSlope[i];
            offsetM[i] = deviceOffsetM[i] - FlowPower.EXPONENT * resistance * flow[i];
        }
    }

    /** Tangent of each orifice q² = k² · p at its flow, and the fixed demand: outflow ≈ draw + drawPerM · head. */
    static void outletTangents(
            double[] orifice2,
            double[] outlet,
            double[] elevationM,
            double[] demand,
            double[] draw,
            double[] drawPerM) {
        for (int i = 1; i < outlet.length; i++) {
            double rise = 0.5 * orifice2[i] / outlet[i];
            drawPerM[i] = rise;
            draw[i] = demand[i] + 0.5 * outlet[i] - rise * elevationM[i];
        }
    }

    /** Leaves to source: what hangs on each link then draws draw + drawPerM · head of the node upstream. */
    static void eliminate(int[] parent, double[] slope, double[] offsetM, double[] draw, double[] drawPerM) {
        draw[0] = 0;
        drawPerM[0] = 0;
        for (int i = parent.length - 1; i > 0; i--) {
            double g = drawPerM[i];
            double scale = 1 / (1 + slope[i] * g);
            double a = (draw[i] - g * offsetM[i]) * scale;
            g *= scale;
            draw[i] = a;
            drawPerM[i] = g;
            draw[parent[i]] += a;
            drawPerM[parent[i]] += g;
        }
    }

    /** Source to leaves: new flows and heads. */
    static void substitute(
            int[] parent,
            double[] slope,
            double[] offsetM,
            double[] draw,
            double[] drawPerM,
            double[] flow,
            double[] headM) {
        for (int i = 1; i < parent.length; i++) {
            double upstreamM = headM[parent[i]];
            double newFlow = draw[i] + drawPerM[i] * upstreamM;
            flow[i] = newFlow;
            headM[i] = upstreamM - (offsetM[i] + slope[i] * newFlow);
        }
    }

    /**
     * New flows of the orifices, by the tangents at the new heads. A step of dq leaves the law off by exactly dq²/k².
     *
     * @return sum of what the orifices are off their law, as head; infinite if one would suck
     */
    static double outlets(
            double[] orifice2, double[] overOrifice2, double[] elevationM, double[] headM, double[] outlet) {
        double sumM = 0;
        double least = 1;
        for (int i = 1; i < outlet.length; i++) {
            double q = outlet[i];
            double step = 0.5 * (orifice2[i] * (headM[i] - elevationM[i]) / q - q);
            outlet[i] = q + step;
            sumM += step * step * overOrifice2[i];
            if (q + step < least) {
                least = q + step;
            }
        }
        return least > 0 ? sumM : Double.POSITIVE_INFINITY;
    }

    /** New powers of the flows. Returns the root of the sum of squares of what the links are off their law. */
    static double powers(
            int[] parent,
            double[] friction,
            double[] flow,
            double[] headM,
            double[] deviceSlope,
            double[] deviceOffsetM,
            double[] flowPower) {
        double squaresM2 = 0;
        for (int i = 1; i < parent.length; i++) {
            double power = FlowPower.of(Math.abs(flow[i]));
            flowPower[i] = power;
            double lossM = (friction[i] * power + deviceSlope[i]) * flow[i] + deviceOffsetM[i];
            double offM = headM[parent[i]] - headM[i] - lossM;
            squaresM2 += offM * offM;
        }
        return Math.sqrt(squaresM2);
    }
}
