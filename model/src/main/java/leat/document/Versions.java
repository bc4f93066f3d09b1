package leat.document;

import java.util.List;
import java.util.function.UnaryOperator;

/** Sees to it that a document is one of a yard, and brings an earlier version into the form of the newest. */
final class Versions {

    /** Each brings a document from the version of its place in the list, counted from 1, to the next. */
    private static final List<UnaryOperator<Json.Fields>> STEPS = List.of(FromVersion1::migrated);

    static final int NEWEST = 2;

    private Versions() {}

    /** The text's values in the form of the newest version; each keeps the place that it has in the text. */
    static Json.Fields current(String text, String file) {
        Json json = JsonReader.read(file, text);
        if (!(json instanceof Json.Fields root)) {
            throw json.spot()
                    .fault(json.called() + " cannot stand here; it must be an object in { }, the document of a"
                            + " yard");
        }
        checkFormat(root);
        Json.Fields current = root;
        for (int version = version(root); version < NEWEST; version++) {
            current = STEPS.get(version - 1).apply(current);
        }
        return current;
    }

    private static void checkFormat(Json.Fields root) {
        Json.Field format = root.byName().get("format");
        if (format == null) {
            throw root.spot()
                    .fault("this is no document of a yard; it must have the field 'format' with the value '"
                            + YardDocument.FORMAT + "'");
        }
        if (!(format.value() instanceof Json.Text text) || !text.value().equals(YardDocument.FORMAT)) {
            throw format.value()
                    .spot()
                    .fault(format.value().called() + " cannot stand here; it must be '" + YardDocument.FORMAT + "'");
        }
    }

    private static int version(Json.Fields root) {
        Json.Field version = root.byName().get("version");
        if (version == null) {
            throw root.spot().fault("the document lacks the field 'version'; it must be given");
        }
        boolean isWhole =
                version.value() instanceof Json.Figure figure && figure.digits().matches("[1-9]\\d{0,8}");
        if (!isWhole) {
            throw version.value()
                    .spot()
                    .fault(version.value().called() + " cannot stand here; it must be " + readable());
        }
        int number = Integer.parseInt(((Json.Figure) version.value()).digits());
        if (number > NEWEST) {
            throw version.value()
                    .spot()
                    .fault("a later release of Leat wrote this document, in version " + number + "; it must be "
                            + readable());
        }
        return number;
    }

    private static String readable() {
        return "a version that this release reads, 1 to " + NEWEST;
    }
}
