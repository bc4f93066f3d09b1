package leat.model.finding;

/** How bad a finding is, worst first. */
public enum Severity {
    /** The plan must not be built so. */
    BREACH("breach"),
    /** It may work, but a careful builder would look again. */
    CAUTION("caution"),
    /** Good to know, or not finished yet. */
    NOTE("note");

    private final String label;

    Severity(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
