package leat.document;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Brings a document of version 1 to version 2. In version 1 the section {@code site} was called {@code terrain}, and
 * what feeds a pipe was one text, {@code "valve V1"}, where now stands {@code {"valve": "V1"}}.
 */
final class FromVersion1 {

    private static final Pattern FEED = Pattern.compile("(source|pipe|valve) (.*)", Pattern.DOTALL);

    private FromVersion1() {}

    static Json.Fields migrated(Json.Fields root) {
        SortedMap<String, Json.Field> fields = new TreeMap<>(root.byName());
        if (fields.containsKey("terrain") && !fields.containsKey("site")) {
            fields.put("site", fields.remove("terrain"));
        }
        return (Json.Fields) inField(of(root, fields), "water", FromVersion1::water);
    }

    private static Json water(Json water) {
        Json main = inField(water, "main", pipes -> inItems(pipes, FromVersion1::pipe));
        return inField(
                main,
                "laterals",
                laterals -> inItems(
                        laterals, lateral -> inField(lateral, "pipes", pipes -> inItems(pipes, FromVersion1::pipe))));
    }

    private static Json pipe(Json pipe) {
        return inField(pipe, "from", FromVersion1::feed);
    }

    private static Json feed(Json from) {
        String text = from instanceof Json.Text one ? one.value() : "";
        Matcher feed = FEED.matcher(text);
        if (!feed.matches()) {
            throw from.spot()
                    .fault(from.called() + " cannot stand here; in version 1 it must be text such as"
                            + " 'source street', 'pipe main' or 'valve V1'");
        }
        SortedMap<String, Json.Field> fields = new TreeMap<>();
        fields.put(feed.group(1), new Json.Field(from.spot(), new Json.Text(from.spot(), feed.group(2))));
        return of(from, fields);
    }

    private static Json.Fields of(Json before, SortedMap<String, Json.Field> fields) {
        return new Json.Fields(before.spot(), Collections.unmodifiableSortedMap(fields));
    }

    /** The object with that field changed; whatever is no object or has no such field stays as it is. */
    private static Json inField(Json json, String name, UnaryOperator<Json> change) {
        if (!(json instanceof Json.Fields object) || !object.byName().containsKey(name)) {
            return json;
        }
        SortedMap<String, Json.Field> fields = new TreeMap<>(object.byName());
        fields.computeIfPresent(name, (key, field) -> new Json.Field(field.nameSpot(), change.apply(field.value())));
        return of(json, fields);
    }

    private static Json inItems(Json json, UnaryOperator<Json> change) {
        return json instanceof Json.Items items ? new Json.Items(json.spot(), Lists.map(items.values(), change)) : json;
    }
}
