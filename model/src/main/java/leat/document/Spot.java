package leat.document;

import java.util.function.Supplier;
import leat.model.fault.InvalidValueException;

/**
 * Where something stands in a file.
 *
 * @param pointer to the value, as RFC 6901 writes it
 * @param line    from 1
 * @param column  from 1, in characters
 */
record Spot(String file, String pointer, int line, int column) {

    DocumentException fault(String complaint) {
        return DocumentException.at(this, complaint, null);
    }

    /** What the maker gives; that it refuses the value is told with this place. */
    <T> T guard(Supplier<T> maker) {
        try {
            return maker.get();
        } catch (InvalidValueException e) {
            throw DocumentException.at(this, String.valueOf(e.getMessage()), e);
        }
    }
}
