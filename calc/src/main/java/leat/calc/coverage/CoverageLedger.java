package leat.calc.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.finding.Citation;
import leat.model.finding.Ledger;
import leat.model.finding.Standing;
import leat.model.finding.Step;
import leat.model.finding.Subject;
import leat.model.quantity.Area;
import leat.model.quantity.Count;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Quantity;

/** Tells how a figure of a watered surface came about, from its cells. */
final class CoverageLedger {

    private static final List<String> FIGURES = List.of("reached", "rate", "low quarter", "christiansen");

    private static final Citation CELLS =
            new Citation("counted cell by cell, docs/theory/coverage.md", Standing.RECOMPUTED);
    private static final Citation LOW_QUARTER =
            new Citation("J. L. Merriam and J. Keller, Farm Irrigation System Evaluation, 1978", Standing.FROM_MEMORY);
    private static final Citation CHRISTIANSEN = new Citation(
            "J. E. Christiansen, Irrigation by Sprinkling, University of California Bulletin 670, 1942",
            Standing.FROM_MEMORY);

    private final SurfaceCoverage coverage;
    private final List<Step> steps = new ArrayList<>();
    private final double[] ratesMPerS;
    private final int reachedCount;

    CoverageLedger(SurfaceCoverage coverage) {
        this.coverage = coverage;
        WetCells cells = coverage.cells();
        DoubleStream.Builder rates = DoubleStream.builder();
        int reached = 0;
        for (int row = 0; row < cells.rows(); row++) {
            for (int column = 0; column < cells.columns(); column++) {
                if (cells.holds(row, column)) {
                    rates.add(cells.rate(row, column).si());
                    reached += cells.reach(row, column) >= coverage.wanted().value() ? 1 : 0;
                }
            }
        }
        ratesMPerS = rates.build().sorted().toArray();
        reachedCount = reached;
    }

    Ledger of(String figure) {
        addCells();
        switch (figure) {
            case "reached" -> addReached();
            case "rate" -> addRate();
            case "low quarter" -> addLowQuarter();
            case "christiansen" -> addChristiansen();
            default ->
                throw new InvalidValueException(
                        "why",
                        "figure",
                        "'" + figure + "'",
                        String.join(", ", FIGURES) + Nearest.hint(figure, FIGURES));
        }
        return new Ledger(Subject.of(coverage.surface()), figure, steps);
    }

    private void addCells() {
        double cellM = coverage.cells().cell().metres();
        step(
                "cells whose centre lies on the surface",
                "counted",
                Count.of(ratesMPerS.length),
                CELLS,
                new Step.Input("side of a cell", coverage.cells().cell()),
                new Step.Input("area of all", new Area(ratesMPerS.length * cellM * cellM)));
    }

    private void addReached() {
        step(
                "cells within reach of as many heads as are wanted",
                "counted",
                Count.of(reachedCount),
                CELLS,
                new Step.Input("heads wanted", coverage.wanted()));
        step(
                "share that is reached as wanted",
                "reached / all",
                coverage.reachedAsWanted(),
                CELLS,
                new Step.Input("reached", Count.of(reachedCount)),
                new Step.Input("all", Count.of(ratesMPerS.length)));
    }

    /** In each cell the heads that reach it add up, each with the depth that its family throws so far out. */
    private void addRate() {
        step(
                "mean rate while all heads run",
                "m = Σ r / n, r: what falls on a cell from all heads that reach it",
                coverage.mean(),
                CELLS,
                new Step.Input("n", Count.of(ratesMPerS.length)),
                new Step.Input("least r", rate(ratesMPerS.length == 0 ? 0 : ratesMPerS[0])),
                new Step.Input("greatest r", coverage.cells().mostRate()));
    }

    private void addLowQuarter() {
        addRate();
        int quarter = Math.min(ratesMPerS.length, Math.max(1, ratesMPerS.length / 4));
        double driestMPerS =
                DoubleStream.of(ratesMPerS).limit(quarter).average().orElse(0);
        step(
                "mean rate of the driest quarter of the cells",
                "Σ r / n of the quarter",
                rate(driestMPerS),
                CELLS,
                new Step.Input("n of the quarter", Count.of(quarter)));
        step(
                "low-quarter distribution uniformity",
                "driest quarter / m",
                coverage.lowQuarter(),
                LOW_QUARTER,
                new Step.Input("driest quarter", rate(driestMPerS)),
                new Step.Input("m", coverage.mean()));
    }

    private void addChristiansen() {
        addRate();
        double meanMPerS = coverage.mean().si();
        double offMPerS = DoubleStream.of(ratesMPerS)
                .map(each -> Math.abs(each - meanMPerS))
                .average()
                .orElse(0);
        step("mean distance of a cell from the mean", "Σ |r - m| / n", rate(offMPerS), CELLS);
        step(
                "Christiansen's coefficient of uniformity",
                "1 - distance / m",
                coverage.christiansen(),
                CHRISTIANSEN,
                new Step.Input("distance", rate(offMPerS)),
                new Step.Input("m", coverage.mean()));
    }

    private static PrecipitationRate rate(double metresPerSecond) {
        return new PrecipitationRate(metresPerSecond);
    }

    private void step(String text, String formula, Quantity value, Citation citation, Step.Input... inputs) {
        steps.add(new Step(text, formula, List.of(inputs), value, citation));
    }
}
