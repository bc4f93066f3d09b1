package leat.model.finding;

/** Which side of a rule's limit is the good one. */
public enum Limit {
    AT_MOST("at most"),
    AT_LEAST("at least");

    private final String label;

    Limit(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
