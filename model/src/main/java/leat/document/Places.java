package leat.document;

import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.model.fault.InvalidValueException;

/** Finds in the file what a complaint of the model is about: it names thing, field and value, but knows no file. */
final class Places {

    private static final Pattern STEP = Pattern.compile("([A-Za-z]+)|\\[(\\d+)]");

    private static final Pattern QUOTED = Pattern.compile("'(.*)'", Pattern.DOTALL);

    /** By what the model calls it, such as {@code zone Z1}; of two with the same name the later one. */
    private final SortedMap<String, Json.Fields> things = new TreeMap<>();

    void put(String thing, Json.Fields fields) {
        things.put(thing, fields);
    }

    /** The complaint with the best place in the file that is known. */
    DocumentException fault(Json within, InvalidValueException complaint) {
        Json culprit = culprit(within, complaint);
        String message = String.valueOf(complaint.getMessage());
        boolean told = !(culprit instanceof Json.Text text) || message.contains(text.value());
        String written = told ? "" : " (here stands " + Words.quoted(((Json.Text) culprit).value()) + ")";
        return DocumentException.at(culprit.spot(), message + written, complaint);
    }

    private Json culprit(Json within, InvalidValueException complaint) {
        Json thing = thing(complaint.thing(), within).orElse(within);
        Json field = step(thing, complaint.field());
        Matcher quoted = QUOTED.matcher(complaint.value());
        return quoted.find() ? textIn(field, quoted.group(1)).orElse(field) : field;
    }

    /**
     * "lateral of Z1, pipe P1" is known by the whole, by "pipe P1", or at least by "lateral of Z1". What lies elsewhere
     * in the file is not meant.
     */
    private Optional<Json> thing(String name, Json within) {
        Json.Fields known = things.get(name);
        if (known != null && known.spot().pointer().startsWith(within.spot().pointer())) {
            return Optional.of(known);
        }
        int comma = name.lastIndexOf(", ");
        if (comma < 0) {
            return Optional.empty();
        }
        return thing(name.substring(comma + 2), within).or(() -> thing(name.substring(0, comma), within));
    }

    /** Walks as far as the file goes along a path such as {@code flowTest.residual} or {@code points[3]}. */
    private static Json step(Json from, String path) {
        Json here = from;
        Matcher step = STEP.matcher(path);
        while (step.find()) {
            Json next = null;
            if (step.group(1) != null && here instanceof Json.Fields fields) {
                Json.Field field = fields.byName().get(step.group(1));
                next = field == null ? null : field.value();
            } else if (step.group(2) != null && here instanceof Json.Items items) {
                int index = Integer.parseInt(step.group(2));
                next = index < items.values().size() ? items.values().get(index) : null;
            }
            if (next == null) {
                return here;
            }
            here = next;
        }
        return here;
    }

    private static Optional<Json> textIn(Json json, String wanted) {
        if (json instanceof Json.Text text && text.value().equals(wanted)) {
            return Optional.of(json);
        }
        if (json instanceof Json.Items items) {
            return items.values().stream()
                    .flatMap(one -> textIn(one, wanted).stream())
                    .findFirst();
        }
        if (json instanceof Json.Fields fields) {
            return fields.byName().values().stream()
                    .flatMap(one -> textIn(one.value(), wanted).stream())
                    .findFirst();
        }
        return Optional.empty();
    }
}
