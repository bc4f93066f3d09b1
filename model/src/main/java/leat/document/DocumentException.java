package leat.document;

import leat.model.fault.LeatException;
import org.jspecify.annotations.Nullable;

/** A file that cannot be read or saved. The message is one line and names the file, the place in it and what is allowed. */
public final class DocumentException extends LeatException {

    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final int column;
    private final String pointer;

    private DocumentException(
            String message, String file, int line, int column, String pointer, @Nullable Throwable cause) {
        super(message);
        if (cause != null) {
            initCause(cause);
        }
        this.file = file;
        this.line = line;
        this.column = column;
        this.pointer = pointer;
    }

    static DocumentException at(Spot spot, String complaint, @Nullable Throwable cause) {
        String where = spot.pointer().isEmpty() ? "" : " (" + spot.pointer() + ")";
        return new DocumentException(
                spot.file() + ", line " + spot.line() + ", column " + spot.column() + where + ": " + complaint,
                spot.file(),
                spot.line(),
                spot.column(),
                spot.pointer(),
                cause);
    }

    /** For what is wrong with the file as a whole. */
    static DocumentException of(String file, String complaint, @Nullable Throwable cause) {
        return new DocumentException(file + ": " + complaint, file, 0, 0, "", cause);
    }

    public String file() {
        return file;
    }

    /** From 1; 0 if the file as a whole is at fault. */
    public int line() {
        return line;
    }

    /** From 1, in characters; 0 if the file as a whole is at fault. */
    public int column() {
        return column;
    }

    /** RFC 6901 pointer to the value at fault, such as {@code /water/heads/7/radius}; empty for the whole. */
    public String pointer() {
        return pointer;
    }
}
