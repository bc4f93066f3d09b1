package leat.model.fault;

/** A value that a thing of the model cannot have: names thing, field, value and what is allowed. */
public final class InvalidValueException extends LeatException {

    private static final long serialVersionUID = 1L;

    private final String thing;
    private final String field;

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
    }

    public String thing() {
        return thing;
    }

    public String field() {
        return field;
    }
}
