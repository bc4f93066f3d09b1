package leat.model.finding;

import java.util.Optional;
import leat.model.geometry.Point;
import leat.model.id.Id;

/** What a finding is about. */
public sealed interface Subject permits Subject.Thing, Subject.Place, Subject.WholeYard {

    static Subject of(Id id) {
        return of(id, "");
    }

    static Subject of(Id id, String field) {
        return new Thing(id, field, Optional.empty());
    }

    /** As far as it is at one place of the thing. */
    static Subject of(Id id, String field, Point at) {
        return new Thing(id, field, Optional.of(at));
    }

    static Subject of(Point point) {
        return new Place(point);
    }

    static Subject yard() {
        return new WholeYard();
    }

    /**
     * A thing, a field of it, or a place on it.
     *
     * @param field the field of the thing, or what it meets there; empty for the whole of it
     * @param at    where on the thing; empty where all of it is meant
     */
    record Thing(Id id, String field, Optional<Point> at) implements Subject {
        @Override
        public String toString() {
            return id.kind() + " " + id.name() + (field.isEmpty() ? "" : ", " + field);
        }
    }

    record Place(Point point) implements Subject {
        @Override
        public String toString() {
            return "at " + point.east() + ", " + point.north();
        }
    }

    record WholeYard() implements Subject {
        @Override
        public String toString() {
            return "the yard";
        }
    }
}
