package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import leat.model.id.SegmentId;
import leat.model.plan.Yard;

/** The sheet by which trenches are dug: each with its name and depth, and what must be left alone. */
final class TrenchPlan implements PlanSheet.Content {

    private final Yard yard;
    private final SortedMap<SegmentId, String> sections;

    /** @param sections letters of the sections that show how each trench looks when it is cut across */
    TrenchPlan(Yard yard, SortedMap<SegmentId, String> sections) {
        this.yard = yard;
        this.sections = sections;
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
        trenches.letter(yard.trenches(), sections);
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
        notes.add("At each trench: its name (12 is trench-12), its depth from finished grade"
                + (sections.isEmpty() ? "." : ", and in brackets the letter of its section.")
                + " The trench schedule tells what lies in it and how deep.");
        notes.add("Nobody enters a trench that could fall in.");
        return notes;
    }
}
