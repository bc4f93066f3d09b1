package leat.report;

import java.util.ArrayList;
import java.util.List;
import leat.model.plan.Yard;

/** The sheet by which trenches are dug: each with its name and depth, and what must be left alone. */
final class TrenchPlan implements PlanSheet.Content {

    private final Yard yard;

    TrenchPlan(Yard yard) {
        this.yard = yard;
    }

    @Override
    public String title() {
        return "Trench plan";
    }

    @Override
    public void paint(Board board) {
        GroundPainter ground = new GroundPainter(board);
        ground.surfaces(yard.terrain().surfaces());
        new HindrancePainter(board).draw(yard.terrain());
        TrenchPainter trenches = new TrenchPainter(board);
        trenches.draw(yard.trenches());
        trenches.letter(yard.trenches());
        new DevicePainter(board, yard.water()).drawPlaces();
        yard.terrain().survey().ifPresent(ground::lot);
        new FindingPainter(board, yard).draw(FindingPainter::isOfTrenches);
    }

    @Override
    public List<String> letteredLayers() {
        return List.of("surfaces", "hindrances", "services", "trenches", "devices", "findings");
    }

    @Override
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add("Have buried lines marked before digging; dig by hand near a mark. Lines behind the meter are"
                + " usually not marked.");
        notes.add("At each trench: its name and its depth from finished grade. The trench schedule tells what lies in"
                + " it and how deep.");
        notes.add("Nobody enters a trench that could fall in.");
        return notes;
    }
}
