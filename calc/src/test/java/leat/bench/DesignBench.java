package leat.bench;

import java.util.List;
import leat.calc.hydraulics.internal.TreeSolver;
import leat.calc.internal.cells.CellGrid;
import leat.calc.internal.cells.CellRuns;
import leat.calc.internal.cells.DepthCurve;
import leat.calc.internal.cells.Evenness;
import leat.calc.internal.cells.HeadArrays;
import leat.calc.internal.cells.RegionRaster;
import leat.calc.internal.cells.Wetting;
import leat.calc.internal.pipes.PipeLaw;
import tools.jackson.databind.JsonNode;

/** A thousand whole designs: pressures and flows, coverage at 0.5 m, price. */
final class DesignBench implements Bench {

    @Override
    public String name() {
        return "design";
    }

    @Override
    public String defaultInstance() {
        return "h_design_40.json";
    }

    @Override
    public Contest contest(JsonNode json) {
        DesignInstance instance = DesignInstance.read(json);
        return new Contest(
                new Ours(instance),
                List.of(
                        new DesignRival("java-bounding-box", instance, CoverageBoxRival::new),
                        new DesignRival("java-every-cell-trigonometry", instance, CoverageTrigonometryRival::new),
                        new DesignRival("jts-prepared-by-cell", instance, CoverageJtsRival::new)));
    }

    private static final class Ours extends DesignEntrant {

        private final double[] frictionPerM;
        private final TreeSolver pipes;
        private final HeadArrays heads;
        private final CellRuns lawn = new CellRuns();
        private final Wetting wetting;
        private final Evenness evenness = new Evenness();

        Ours(DesignInstance instance) {
            super(instance);
            frictionPerM = new double[instance.boreM().length];
            for (int size = 0; size < frictionPerM.length; size++) {
                frictionPerM[size] = PipeLaw.frictionCoefficient(1, instance.boreM()[size], instance.hazenWilliamsC());
            }
            int[] parent = new int[instance.heads() + 1];
            heads = new HeadArrays(instance.heads());
            CoverageInstance coverage = instance.coverage();
            for (int i = 0; i < instance.heads(); i++) {
                parent[i + 1] = instance.parent()[i] + 1;
                heads.arc(i, Math.toRadians(coverage.startDeg()[i]), Math.toRadians(coverage.sweepDeg()[i]));
                heads.profile(i, DepthCurve.WEDGE);
            }
            pipes = new TreeSolver(parent);
            var grid = new CellGrid(0, 0, coverage.cellM(), coverage.columns(), coverage.rows());
            wetting = new Wetting(grid, heads);
            new RegionRaster().rasterise(grid, new double[][] {coverage.lawnM()}, lawn);
        }

        @Override
        public String name() {
            return "leat";
        }

        /** All zones hang on one source of fixed head, so they may be solved together and yet run alone. */
        @Override
        void measure() {
            for (int i = 0; i < heads.size(); i++) {
                pipes.setPipe(i + 1, frictionPerM[draft.size[i]] * draft.lengthM[i], 0);
                pipes.setOutlet(i + 1, instance.nozzleK()[draft.nozzle[i]], 0.5);
            }
            pipes.solve(instance.sourceHeadM());
            flowM3PerS = pipes.inflowM3PerS();
            lowestPressureM = Double.POSITIVE_INFINITY;
            for (int i = 0; i < heads.size(); i++) {
                lowestPressureM = Math.min(lowestPressureM, pipes.pressureM(i + 1));
                heads.place(i, draft.xM[i], draft.yM[i]);
                heads.radius(i, instance.nozzleRadiusM()[draft.nozzle[i]]);
                heads.flow(i, pipes.outletM3PerS(i + 1));
            }
            wetting.wetAll();
            evenness.measure(wetting, lawn);
            christiansen = evenness.christiansen();
            lowQuarter = evenness.lowQuarter();
        }
    }
}
