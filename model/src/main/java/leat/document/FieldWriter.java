package leat.document;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.geometry.Region;
import leat.model.id.Id;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;

/** Collects the fields of one object to be written, in their order. What is empty or usual is left out. */
final class FieldWriter {

    private final UnitSystem units;
    private final Map<String, Object> fields = new LinkedHashMap<>();

    FieldWriter(UnitSystem units) {
        this.units = units;
    }

    Map<String, Object> fields() {
        return Collections.unmodifiableMap(fields);
    }

    FieldWriter text(String name, String value) {
        return put(name, value);
    }

    FieldWriter text(String name, Optional<String> value) {
        value.ifPresent(one -> put(name, one));
        return this;
    }

    FieldWriter number(String name, double value) {
        boolean isWhole = Double.compare(value, (int) value) == 0; // not so for -0.0
        return isWhole ? put(name, (int) value) : put(name, value);
    }

    FieldWriter flag(String name, boolean value) {
        return value ? put(name, true) : this;
    }

    FieldWriter word(String name, Enum<?> value) {
        return put(name, Words.of(value));
    }

    /** Left out when it is what a reader assumes. */
    FieldWriter word(String name, Enum<?> value, Enum<?> usual) {
        return value == usual ? this : word(name, value);
    }

    FieldWriter quantity(String name, Quantity value) {
        return put(name, Units.write(value, units));
    }

    FieldWriter id(String name, Id id) {
        return put(name, id.name());
    }

    FieldWriter id(String name, Optional<? extends Id> id) {
        id.ifPresent(one -> put(name, one.name()));
        return this;
    }

    FieldWriter ids(String name, Collection<? extends Id> ids) {
        return list(name, ids.stream().map(Id::name).toList());
    }

    FieldWriter point(String name, Point point) {
        return put(name, point(point));
    }

    FieldWriter route(String name, Polyline route) {
        return put(name, points(route.points()));
    }

    /** As the fields {@code outline} and {@code holes}. */
    FieldWriter region(Region region) {
        put("outline", points(region.outer()));
        return list("holes", region.holes().stream().map(this::points).toList());
    }

    /** Left out when empty. */
    FieldWriter list(String name, List<?> values) {
        return values.isEmpty() ? this : put(name, values);
    }

    /** Written even when empty. */
    FieldWriter always(String name, List<?> values) {
        return put(name, values);
    }

    /** Left out when empty. */
    FieldWriter object(String name, Map<String, ?> value) {
        return value.isEmpty() ? this : put(name, value);
    }

    FieldWriter object(String name, FieldWriter value) {
        return object(name, value.fields());
    }

    private FieldWriter put(String name, Object value) {
        fields.put(name, value);
        return this;
    }

    private List<?> points(List<Point> points) {
        return points.stream().map(this::point).toList();
    }

    private List<String> point(Point point) {
        return List.of(Units.write(point.east(), units), Units.write(point.north(), units));
    }
}
