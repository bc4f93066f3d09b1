package leat.calc.digging;

/** What is laid in a trench, as far as it matters for how it lies there. */
public enum LaidKind {
    MAIN("main"),
    LATERAL("lateral"),
    /** Conductors that can hurt: kept apart from everything else. */
    POWER("power"),
    /** Wires of low voltage, such as valve wires. */
    CONTROL("control");

    private final String label;

    LaidKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
