package leat.bench;

import java.util.Arrays;
import java.util.function.Function;

/** Hand-written tree hydraulics with one of the rivals of coverage. */
final class DesignRival extends DesignEntrant {

    private static final double FLOW_POWER = 1.852;
    private static final double LITRES_PER_HOUR = 3.6e6;

    private final String name;
    private final CoverageInstance moving;
    private final CoverageByCells coverage;
    private final double[] perM;
    private final double[] flow;
    private final double[] outlet;
    private final double[] head;
    private final double[] slope;
    private final double[] offset;
    private final double[] draw;
    private final double[] drawPerM;

    DesignRival(String name, DesignInstance instance, Function<CoverageInstance, CoverageByCells> kind) {
        super(instance);
        this.name = name;
        CoverageInstance base = instance.coverage();
        moving = new CoverageInstance(
                base.lawnM(),
                draft.xM,
                draft.yM,
                new double[instance.heads()],
                base.startDeg(),
                base.sweepDeg(),
                new double[instance.heads()],
                base.cellM(),
                base.columns(),
                base.rows());
        coverage = kind.apply(moving);
        perM = Arrays.stream(instance.boreM())
                .map(bore -> 10.67 / (Math.pow(instance.hazenWilliamsC(), FLOW_POWER) * Math.pow(bore, 4.8704)))
                .toArray();
        flow = new double[instance.heads()];
        outlet = new double[instance.heads()];
        head = new double[instance.heads()];
        slope = new double[instance.heads()];
        offset = new double[instance.heads()];
        draw = new double[instance.heads()];
        drawPerM = new double[instance.heads()];
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    void measure() {
        solvePipes();
        flowM3PerS = 0;
        lowestPressureM = Double.POSITIVE_INFINITY;
        for (int i = 0; i < head.length; i++) {
            flowM3PerS += outlet[i];
            lowestPressureM = Math.min(lowestPressureM, head[i]);
            moving.radiusM()[i] = instance.nozzleRadiusM()[draft.nozzle[i]];
            moving.flowLPerH()[i] = outlet[i] * LITRES_PER_HOUR;
        }
        coverage.solve();
        christiansen = coverage.christiansen();
        lowQuarter = coverage.lowQuarter();
    }

    /** Newton on flows and heads; a step is one sweep to the source and one back. */
    private void solvePipes() {
        for (int i = 0; i < head.length; i++) {
            flow[i] = 3e-4;
            outlet[i] = instance.nozzleK()[draft.nozzle[i]] * Math.sqrt(instance.sourceHeadM() / 2);
        }
        double change = 1;
        for (int step = 0; step < 60 && change > 1e-9; step++) {
            change = step();
        }
    }

    private double step() {
        for (int i = 0; i < head.length; i++) {
            double k = instance.nozzleK()[draft.nozzle[i]];
            double resistance = perM[draft.size[i]] * draft.lengthM[i] * Math.pow(Math.abs(flow[i]), FLOW_POWER - 1);
            slope[i] = Math.max(FLOW_POWER * resistance, 1e-3);
            offset[i] = (slope[i] - resistance) * flow[i];
            draw[i] = outlet[i] / 2;
            drawPerM[i] = k * k / (2 * outlet[i]);
        }
        for (int i = head.length - 1; i >= 0; i--) {
            // head = upstream − slope · flow + offset, and flow = draw + drawPerM · head
            double shrink = 1 / (1 + drawPerM[i] * slope[i]);
            int up = instance.parent()[i];
            if (up >= 0) {
                draw[up] += (draw[i] + drawPerM[i] * offset[i]) * shrink;
                drawPerM[up] += drawPerM[i] * shrink;
            }
        }
        double change = 0;
        for (int i = 0; i < head.length; i++) {
            int up = instance.parent()[i];
            double upHead = up < 0 ? instance.sourceHeadM() : head[up];
            double before = head[i];
            head[i] = (upHead + offset[i] - slope[i] * draw[i]) / (1 + slope[i] * drawPerM[i]);
            flow[i] = draw[i] + drawPerM[i] * head[i];
            double k = instance.nozzleK()[draft.nozzle[i]];
            outlet[i] = Math.max((outlet[i] + k * k * head[i] / outlet[i]) / 2, 1e-12);
            change = Math.max(change, Math.abs(head[i] - before));
        }
        return change;
    }
}
