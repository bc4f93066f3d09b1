package leat.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import leat.model.fault.InvalidValueException;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.geometry.Region;
import leat.model.quantity.Dimension;
import leat.model.quantity.Length;
import leat.model.quantity.Quantity;
import leat.model.quantity.Units;
import org.jspecify.annotations.Nullable;

/** Asks an object of a file for its fields. Every complaint names the place, what stands there and what may. */
final class FieldReader {

    private final Json.Fields fields;
    private final String thing;
    private final Places places;

    private FieldReader(Json.Fields fields, String thing, Places places) {
        this.fields = fields;
        this.thing = thing;
        this.places = places;
    }

    /**
     * @param thing   what the object is, such as {@code zone}, for messages
     * @param allowed the names of the fields it may have
     */
    static FieldReader of(Json json, String thing, Places places, String... allowed) {
        FieldReader reader = new FieldReader(fields(json, thing), thing, places);
        reader.onlyAllows(List.of(allowed));
        return reader;
    }

    private static Json.Fields fields(Json json, String thing) {
        if (json instanceof Json.Fields fields) {
            return fields;
        }
        throw wrongType(json, "an object in { } that describes a " + thing);
    }

    /** What the field {@code kind} of an object says, before it is known which other fields it may have. */
    static <E extends Enum<E>> E kind(Json json, String thing, Class<E> type) {
        return new FieldReader(fields(json, thing), thing, new Places()).word("kind", type);
    }

    private void onlyAllows(List<String> allowed) {
        fields.byName().forEach((name, field) -> {
            if (!allowed.contains(name)) {
                throw field.nameSpot()
                        .fault("a " + thing + " has no field " + Words.quoted(name) + "; it must be "
                                + Words.oneOf(name, allowed));
            }
        });
    }

    private static DocumentException wrongType(Json json, String allowed) {
        return json.spot().fault(json.called() + " cannot stand here; it must be " + allowed);
    }

    // One value

    private @Nullable Json find(String name) {
        Json.Field field = fields.byName().get(name);
        return field == null ? null : field.value();
    }

    private Json required(String name) {
        Json value = find(name);
        if (value == null) {
            throw fields.spot().fault("the " + thing + " lacks the field " + Words.quoted(name) + "; it must be given");
        }
        return value;
    }

    boolean has(String name) {
        return find(name) != null;
    }

    int count() {
        return fields.byName().size();
    }

    Spot spot() {
        return fields.spot();
    }

    Spot spot(String name) {
        return required(name).spot();
    }

    String text(String name) {
        return text(required(name));
    }

    private static String text(Json json) {
        if (json instanceof Json.Text text) {
            return text.value();
        }
        throw wrongType(json, "text in double quotes");
    }

    Optional<String> optionalText(String name) {
        return has(name) ? Optional.of(text(name)) : Optional.empty();
    }

    /** True or false; false when left out. */
    boolean flag(String name) {
        Json value = find(name);
        if (value == null) {
            return false;
        }
        if (value instanceof Json.Flag flag) {
            return flag.value();
        }
        throw wrongType(value, "true or false");
    }

    double number(String name) {
        Json value = required(name);
        if (value instanceof Json.Figure figure) {
            double number = Double.parseDouble(figure.digits());
            if (Double.isFinite(number)) {
                return number;
            }
        }
        throw wrongType(value, "a finite number without quotes");
    }

    Optional<Double> optionalNumber(String name) {
        return has(name) ? Optional.of(number(name)) : Optional.empty();
    }

    int whole(String name) {
        double number = number(name);
        if (number != Math.rint(number) || Math.abs(number) > Integer.MAX_VALUE) {
            throw wrongType(required(name), "a whole number without quotes");
        }
        return (int) number;
    }

    <E extends Enum<E>> E word(String name, Class<E> type) {
        return word(required(name), type);
    }

    /** The words of a list, in its order; one that stands there twice is refused. */
    <E extends Enum<E>> List<E> words(String name, Class<E> type) {
        List<E> words = new ArrayList<>();
        list(name, value -> {
            E word = word(value, type);
            if (words.contains(word)) {
                throw value.spot().fault(Words.quoted(Words.of(word)) + " stands there twice");
            }
            return words.add(word);
        });
        return words;
    }

    private static <E extends Enum<E>> E word(Json value, Class<E> type) {
        String word = text(value);
        int index = Words.all(type).indexOf(word);
        if (index < 0) {
            throw value.spot()
                    .fault(Words.quoted(word) + " cannot stand here; it must be " + Words.oneOf(word, Words.all(type)));
        }
        return type.getEnumConstants()[index];
    }

    <E extends Enum<E>> E word(String name, Class<E> type, E otherwise) {
        return has(name) ? word(name, type) : otherwise;
    }

    <Q extends Quantity> Q quantity(String name, Dimension dimension, Class<Q> type) {
        return quantity(required(name), dimension, type);
    }

    <Q extends Quantity> Optional<Q> optionalQuantity(String name, Dimension dimension, Class<Q> type) {
        return has(name) ? Optional.of(quantity(name, dimension, type)) : Optional.empty();
    }

    Length length(String name) {
        return quantity(name, Dimension.LENGTH, Length.class);
    }

    private static <Q extends Quantity> Q quantity(Json json, Dimension dimension, Class<Q> type) {
        if (!(json instanceof Json.Text text)) {
            throw wrongType(json, "text: " + dimension.withArticle() + " with its unit");
        }
        try {
            return type.cast(Units.parse(dimension, text.value()));
        } catch (InvalidValueException e) {
            throw DocumentException.at(
                    json.spot(),
                    Words.quoted(text.value()) + " is no " + dimension.label() + "; it must be " + e.allowed(),
                    e);
        }
    }

    /** A name of a thing, as its id. */
    <T> T id(String name, Function<String, T> maker) {
        return id(required(name), maker);
    }

    private static <T> T id(Json json, Function<String, T> maker) {
        String text = text(json);
        return json.spot().guard(() -> maker.apply(text));
    }

    <T> Optional<T> optionalId(String name, Function<String, T> maker) {
        return has(name) ? Optional.of(id(name, maker)) : Optional.empty();
    }

    // Several values

    /** The entries of a list; none when it is left out. */
    <T> List<T> list(String name, Function<Json, T> maker) {
        Json value = find(name);
        return value == null ? List.of() : list(value, maker);
    }

    private static <T> List<T> list(Json json, Function<Json, T> maker) {
        if (json instanceof Json.Items items) {
            return items.values().stream().map(maker).toList();
        }
        throw wrongType(json, "a list in [ ]");
    }

    <T> List<T> ids(String name, Function<String, T> maker) {
        return list(name, one -> id(one, maker));
    }

    <Q extends Quantity> List<Q> quantities(String name, Dimension dimension, Class<Q> type) {
        return list(name, one -> quantity(one, dimension, type));
    }

    /** Texts in their order; none when left out. */
    List<String> texts(String name) {
        return list(name, FieldReader::text);
    }

    /** Names of things, each with the name of another. */
    <K extends Comparable<? super K>, V> SortedMap<K, V> idsById(
            String name, Function<String, K> key, Function<String, V> value) {
        SortedMap<K, V> map = new TreeMap<>();
        Json json = find(name);
        if (json != null) {
            fields(json, thing + "'s " + name)
                    .byName()
                    .forEach((from, field) ->
                            map.put(field.nameSpot().guard(() -> key.apply(from)), id(field.value(), value)));
        }
        return map;
    }

    /** What the maker reads from the object in that field; empty when it is left out. */
    <T> Optional<T> optional(String name, Function<Json, T> maker) {
        return Optional.ofNullable(find(name)).map(maker);
    }

    <T> T object(String name, Function<Json, T> maker) {
        return maker.apply(required(name));
    }

    Point point(String name) {
        return point(required(name));
    }

    private static Point point(Json json) {
        if (json instanceof Json.Items items && items.values().size() == 2) {
            return Point.at(
                    quantity(items.values().get(0), Dimension.LENGTH, Length.class),
                    quantity(items.values().get(1), Dimension.LENGTH, Length.class));
        }
        throw wrongType(json, "a point: a list of its lengths to the east and to the north");
    }

    private static List<Point> points(Json json) {
        return list(json, FieldReader::point);
    }

    Polyline route(String name) {
        List<Point> points = points(required(name));
        return spot(name).guard(() -> new Polyline(points));
    }

    /** From the fields {@code outline} and {@code holes}. */
    Region region() {
        List<Point> outline = points(required("outline"));
        Region bare = spot("outline").guard(() -> Region.of(outline));
        List<List<Point>> holes = list("holes", FieldReader::points);
        return holes.isEmpty() ? bare : spot("holes").guard(() -> new Region(outline, holes));
    }

    // The whole

    /** What the maker builds from the fields; that it refuses one is told with the place of that field. */
    <T> T made(Supplier<T> maker) {
        try {
            return maker.get();
        } catch (InvalidValueException e) {
            throw places.fault(fields, e);
        }
    }

    /** Complaints about the thing of that name will find it here. */
    void knownAs(String name) {
        places.put(name, fields);
    }

    /** As {@link #made}; later complaints about the thing of that name will find it here. */
    <T> T named(Supplier<T> maker) {
        Json id = find("id");
        if (id instanceof Json.Text name) {
            knownAs(thing + " " + name.value());
        }
        return made(maker);
    }
}
