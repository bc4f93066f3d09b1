package leat.model.fault;

/** A value that a thing of the model cannot have: names thing, field, value and what is allowed. */
public final class InvalidValueException extends LeatException {

    private static final long serialVersionUID = 1L;

    private final String thing;
    private final String field;
    private final String value;
    private final String allowed;

    /**
     * @param thing   what was being made, such as {@code head R7}
     * @param field   the field at fault, such as {@code radius}
     * @param value   the value as the user would recognise it
     * @param allowed what would have been right, as the end of "it must be …"
     */
    public InvalidValueException(String thing, String field, String value, String allowed) {
        super(thing + ": " + field + " is " + value + "; it must be " + allowed);
        this.thing = thing;
        this.field = field;
        this.value = value;
        this.allowed = allowed;
    }

    private InvalidValueException(InvalidValueException inner, String thing, String message) {
        super(message, inner);
        this.thing = thing;
        this.field = inner.field;
        this.value = inner.value;
        this.allowed = inner.allowed;
    }

    /** The same refusal for a thing whose own record does not know its owner: {@code pipe P1, route: …}. */
    public InvalidValueException within(String owner) {
        return new InvalidValueException(this, owner + ", " + thing, owner + ", " + getMessage());
    }

    public String thing() {
        return thing;
    }

    public String field() {
        return field;
    }

    public String value() {
        return value;
    }

    public String allowed() {
        return allowed;
    }
}
