package leat.model.finding;

import leat.model.geometry.Point;
import leat.model.id.Id;

/** What a finding is about. */
public sealed interface Subject permits Subject.Thing, Subject.Place, Subject.WholeYard {

    static Subject of(Id id) {
        return new Thing(id, "");
    }

    static Subject of(Id id, String field) {
        return new Thing(id, field);
    }

    static Subject of(Point point) {
        return new Place(point);
    }

    static Subject yard() {
        return new WholeYard();
    }

    /** @param field the field of the thing, or empty for the whole of it */
    record Thing(Id id, String field) implements Subject {
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
