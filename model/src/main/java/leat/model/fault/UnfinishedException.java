package leat.model.fault;

import java.util.List;

/** Parts that lack something or name something that does not exist; all of it is told at once. */
public final class UnfinishedException extends LeatException {

    private static final long serialVersionUID = 1L;

    private final transient List<String> complaints;

    public UnfinishedException(List<String> complaints) {
        super(String.join("\n", complaints));
        this.complaints = List.copyOf(complaints);
    }

    /** One line for each thing that is missing, in the order of the parts. */
    public List<String> complaints() {
        return complaints;
    }
}
