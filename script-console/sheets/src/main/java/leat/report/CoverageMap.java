package leat.report;

import java.util.List;
import leat.calc.coverage.CoverageResult;
import leat.model.plan.Yard;

/** The sheet that shows how evenly the heads water lawns and beds. */
final class CoverageMap implements PlanSheet.Content {

    private final Yard yard;
    private final CoverageResult coverage;

    CoverageMap(Yard yard, CoverageResult coverage) {
        this.yard = yard;
        this.coverage = coverage;
    }

    @Override
    public String title() {
        return "Coverage map";
    }

    @Override
    public void paint(Board board) {
        GroundPainter ground = new GroundPainter(board);
        ground.surfaces(yard.terrain().surfaces());
        new CoveragePainter(board, coverage).draw();
        HeadPainter heads = new HeadPainter(board, yard.water());
        heads.draw();
        heads.drawSymbols();
        heads.zoneLegend();
        yard.terrain().survey().ifPresent(ground::lot);
    }

    @Override
    public List<String> letteredLayers() {
        return List.of("surfaces", "heads");
    }

    @Override
    public List<String> notes() {
        return List.of(
                "Depths are as if all heads ran for the same time in still air.",
                "Shades give each spot's share of the mean of its own lawn or bed.");
    }
}
