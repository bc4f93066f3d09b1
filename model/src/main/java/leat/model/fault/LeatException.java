package leat.model.fault;

/** Input that cannot be read or has no meaning. The message is one line for the user; the kin say where it came from. */
public class LeatException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public LeatException(String message) {
        super(message);
    }

    public LeatException(String message, Throwable cause) {
        super(message, cause);
    }
}
