package leat.model.finding;

/** How well a figure is backed. */
public enum Standing {
    /** Read in a public text, or exactly defined. */
    PUBLISHED("published"),
    /** The formula is published; the figure was computed with it. */
    RECOMPUTED("recomputed"),
    /** Recalled from a standard or a handbook; not confirmed in a text. */
    FROM_MEMORY("from memory"),
    /** A fact of the trade that nobody publishes. */
    COMMON_PRACTICE("common practice, no source"),
    /** Stated by the user of this yard. */
    STATED("stated in the yard");

    private final String label;

    Standing(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
