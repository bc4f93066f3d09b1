package leat.calc.workplan;

/** Who does a step. Where local rules say otherwise, they decide. */
public enum Worker {
    ANYONE("anyone"),
    /** Those who own lines in the ground, or the service that speaks for them. */
    LINE_OWNERS("the owners of the lines"),
    TRAINED("people trained for it"),
    LICENSED("a licensed person"),
    INSPECTOR("the inspector");

    private final String label;

    Worker(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
