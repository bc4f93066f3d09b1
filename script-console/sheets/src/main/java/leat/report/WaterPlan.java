package leat.report;

import java.util.ArrayList;
import java.util.List;
import leat.model.plan.Yard;
import leat.model.water.WaterSystem;

/** The sheet from which the water is built: ground, hindrances, trenches, pipes, heads, devices. */
final class WaterPlan implements PlanSheet.Content {

    private final Yard yard;

    WaterPlan(Yard yard) {
        this.yard = yard;
    }

    @Override
    public String title() {
        return "Water plan";
    }

    @Override
    public void paint(Board board) {
        WaterSystem water = yard.water();
        GroundPainter ground = new GroundPainter(board);
        ground.surfaces(yard.terrain().surfaces());
        HindrancePainter hindrances = new HindrancePainter(board);
        hindrances.draw(yard.terrain());
        new TrenchPainter(board)
                .draw(yard.trenches().stream()
                        .filter(trench ->
                                trench.contents().isEmpty() || !trench.pipes().isEmpty())
                        .toList());
        HeadPainter heads = new HeadPainter(board, water);
        heads.draw();
        new PipePainter(board, water).draw();
        heads.drawSymbols();
        heads.zoneLegend();
        new DevicePainter(board, water).draw();
        yard.terrain().survey().ifPresent(ground::lot);
        new FindingPainter(board, yard).draw(finding -> !FindingPainter.isOfPower(finding));
    }

    @Override
    public List<String> letteredLayers() {
        return List.of("surfaces", "hindrances", "services", "laterals", "main", "heads", "devices", "findings");
    }

    @Override
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (!yard.terrain().services().isEmpty()) {
            notes.add("Have buried lines marked before digging; dig by hand near a mark.");
        }
        notes.add(
                "Symbols and breadths of lines are not to scale; places are. Pipes in one trench are drawn side by side.");
        return notes;
    }
}
