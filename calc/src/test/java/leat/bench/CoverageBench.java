package leat.bench;

import java.util.List;
import leat.calc.internal.cells.CellGrid;
import leat.calc.internal.cells.CellRuns;
import leat.calc.internal.cells.DepthCurve;
import leat.calc.internal.cells.Evenness;
import leat.calc.internal.cells.HeadArrays;
import leat.calc.internal.cells.RegionRaster;
import leat.calc.internal.cells.Wetting;
import tools.jackson.databind.JsonNode;

/** What all heads put on a lawn and how evenly, from polygon and heads to the figures. */
final class CoverageBench implements Bench {

    private final String name;
    private final double cellM;

    CoverageBench(String name, double cellM) {
        this.name = name;
        this.cellM = cellM;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String defaultInstance() {
        return "c_coverage_60.json";
    }

    @Override
    public Contest contest(JsonNode json) {
        CoverageInstance instance = CoverageInstance.read(json, cellM);
        return new Contest(
                new Ours(instance),
                List.of(
                        new CoverageBoxRival(instance),
                        new CoverageTrigonometryRival(instance),
                        new CoverageJtsRival(instance)));
    }

    private static final class Ours implements Entrant {

        private final CoverageInstance instance;
        private final double[][] ringsM;
        private final HeadArrays heads;
        private final RegionRaster raster = new RegionRaster();
        private final CellRuns lawn = new CellRuns();
        private final Evenness evenness = new Evenness();
        private final Wetting wetting;

        Ours(CoverageInstance instance) {
            this.instance = instance;
            ringsM = new double[][] {instance.lawnM()};
            heads = new HeadArrays(instance.heads());
            wetting = new Wetting(new CellGrid(0, 0, instance.cellM(), instance.columns(), instance.rows()), heads);
        }

        @Override
        public String name() {
            return "leat";
        }

        @Override
        public double solve() {
            raster.rasterise(wetting.grid(), ringsM, lawn);
            for (int i = 0; i < heads.size(); i++) {
                heads.place(i, instance.xM()[i], instance.yM()[i]);
                heads.radius(i, instance.radiusM()[i]);
                heads.arc(i, Math.toRadians(instance.startDeg()[i]), Math.toRadians(instance.sweepDeg()[i]));
                heads.flow(i, instance.flowLPerH()[i] / 3.6e6);
                heads.profile(i, DepthCurve.WEDGE);
            }
            wetting.wetAll();
            evenness.measure(wetting, lawn);
            return evenness.christiansen() + evenness.lowQuarter();
        }

        @Override
        public Answer answer() {
            return CoverageInstance.answer(
                    evenness.cells(),
                    evenness.meanRateMPerS() * 3.6e6,
                    evenness.christiansen(),
                    evenness.lowQuarter(),
                    (double) evenness.cellsReachedByTwo() / evenness.cells());
        }
    }
}
