package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import leat.draw.Box;
import leat.draw.Canvas;
import leat.draw.Dash;
import leat.draw.Lettering;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.PenPath;
import leat.draw.Style;
import leat.model.finding.Finding;
import leat.model.finding.Severity;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.ManifoldId;
import leat.model.id.SegmentId;
import leat.model.id.WireEndId;
import leat.model.plan.Yard;

/** Marks breaches and cautions with their numbers in the list of findings; notes stay in the list. */
final class FindingPainter {

    private static final Style BREACH =
            Style.line(LineWidth.W070, Palette.VERMILION).withFill(Palette.WHITE);
    private static final Style CAUTION = Style.line(LineWidth.W025, Palette.BLACK)
            .withDash(Dash.SHORT_DASHED)
            .withFill(Palette.WHITE);

    /** More numbers than this at one place are cut short; the list has them all. */
    private static final int MOST_NUMBERS = 4;

    private record Mark(Point at, Severity severity, List<String> numbers) {}

    private final Board board;
    private final Places places;

    FindingPainter(Board board, Yard yard) {
        this.board = board;
        this.places = new Places(yard);
    }

    /** Whether a finding belongs on the sheet of power and control. */
    static boolean isOfPower(Finding finding) {
        return finding.subject() instanceof Subject.Thing thing
                && (thing.id() instanceof WireEndId
                        || thing.id() instanceof CircuitId
                        || thing.id() instanceof ConduitId
                        || thing.id() instanceof CableId)
                && !(thing.id() instanceof ManifoldId);
    }

    static boolean isOfTrenches(Finding finding) {
        return finding.subject() instanceof Subject.Thing thing && thing.id() instanceof SegmentId;
    }

    /** Marks those that belong on this sheet. */
    void draw(Predicate<Finding> wanted) {
        SortedMap<String, Mark> marks = new TreeMap<>();
        int number = 0;
        for (Finding finding : board.figures().sorted()) {
            number++;
            Optional<Point> at = at(finding.subject());
            if (finding.severity() != Severity.NOTE && wanted.test(finding) && at.isPresent()) {
                String key = board.x(at.get()) + " " + board.y(at.get());
                marks.computeIfAbsent(key, one -> new Mark(at.get(), finding.severity(), new ArrayList<>()))
                        .numbers()
                        .add(Integer.toString(number));
            }
        }
        board.canvas().beginLayer("findings", "Findings");
        marks.values().forEach(this::mark);
        board.canvas().endLayer();
    }

    private Optional<Point> at(Subject subject) {
        if (subject instanceof Subject.Thing thing) {
            return thing.at().isPresent() ? thing.at() : places.of(thing.id());
        }
        return subject instanceof Subject.Place place ? Optional.of(place.point()) : Optional.empty();
    }

    private void mark(Mark mark) {
        List<String> numbers = mark.numbers();
        String text = numbers.size() <= MOST_NUMBERS
                ? String.join(" ", numbers)
                : String.join(" ", numbers.subList(0, MOST_NUMBERS)) + " …";
        boolean breach = mark.severity() == Severity.BREACH;
        board.callouts()
                .addFramed(
                        "findings",
                        "finding " + numbers.get(0),
                        List.of(text),
                        board.x(mark.at()),
                        board.y(mark.at()),
                        3.2,
                        Callouts.FINDINGS,
                        Lettering.small().inBold(),
                        breach ? BREACH : CAUTION);
        board.legend()
                .add(
                        breach ? "90" : "91",
                        breach ? "number of a breach in the list of findings" : "number of a caution there",
                        (c, box) -> sample(c, box, breach));
    }

    private static void sample(Canvas canvas, Box box, boolean breach) {
        canvas.shape(PenPath.box(Box.around(box.centreX(), box.centreY(), 2.4, 2)), breach ? BREACH : CAUTION);
        canvas.text(
                box.centreX(),
                box.centreY() + 1.1,
                "1",
                Lettering.small().inBold().anchored(Lettering.Anchor.MIDDLE));
    }
}
