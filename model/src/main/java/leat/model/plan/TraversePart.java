package leat.model.plan;

import java.util.ArrayList;
import java.util.List;
import leat.model.geometry.Bearing;
import leat.model.quantity.Length;
import leat.model.site.Course;
import leat.model.site.Survey;

/** The lot boundary, corner after corner. */
public final class TraversePart extends Part {

    private final Place start;
    private final List<Course> courses;
    private final Fields fields;

    TraversePart(Place start, List<Course> courses, Fields fields) {
        this.start = start;
        this.courses = List.copyOf(courses);
        this.fields = fields;
    }

    /** One more side: its bearing as the deed writes it, such as {@code N 4°10' E}, and its length. */
    public TraversePart go(String bearing, Length distance) {
        List<Course> more = new ArrayList<>(courses);
        more.add(new Course(Bearing.parse(bearing), distance));
        return new TraversePart(start, more, fields);
    }

    /** Draws the last side, which was not measured, back to the start. */
    public TraversePart close() {
        return new TraversePart(start, courses, fields.with("closing", Survey.Closing.DRAWN));
    }

    /** All sides were measured: spreads the error of closure over them. */
    public TraversePart balance() {
        return new TraversePart(start, courses, fields.with("closing", Survey.Closing.MEASURED));
    }

    @Override
    void addTo(YardDraft draft) {
        if (fields.find("closing", Survey.Closing.class).isEmpty()) {
            draft.complain("traverse: it does not end; add close() or balance()");
            return;
        }
        draft.survey(new Survey(start.in(draft.units()), courses, fields.get("closing", Survey.Closing.class)));
    }
}
