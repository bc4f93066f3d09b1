package leat.model.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.Require;

/** What a part was told so far, by field. Immutable. */
final class Fields {

    static final Fields NONE = new Fields(Collections.emptySortedMap());

    private final SortedMap<String, Object> values;

    private Fields(SortedMap<String, Object> values) {
        this.values = values;
    }

    Fields with(String field, Object value) {
        Require.present("part", field, value);
        SortedMap<String, Object> more = new TreeMap<>(values);
        more.put(field, value);
        return new Fields(more);
    }

    <T> T get(String field, Class<T> type) {
        return find(field, type).orElseThrow(() -> new IllegalStateException("field " + field + " was not checked"));
    }

    <T> T get(String field, T otherwise, Class<T> type) {
        return find(field, type).orElse(otherwise);
    }

    <T> Optional<T> find(String field, Class<T> type) {
        return Optional.ofNullable(values.get(field)).map(type::cast);
    }

    /** The fields that were set but are none of these, in the order of the alphabet. */
    List<String> beside(List<String> allowed) {
        List<String> others = new ArrayList<>(values.keySet());
        others.removeAll(allowed);
        return others;
    }

    List<String> missing(List<String> required) {
        List<String> missing = new ArrayList<>(required);
        missing.removeAll(values.keySet());
        return missing;
    }
}
