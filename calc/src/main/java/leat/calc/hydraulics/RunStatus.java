package leat.calc.hydraulics;

/** Whether a zone or a bib could be run, and how it went. */
public enum RunStatus {
    /** Water comes out everywhere. */
    RUNS("runs"),
    /** Water comes out nowhere, or not at some heads. */
    STARVED("starved"),
    /** No pipes lead to it from a source, so there is nothing to compute. */
    NOT_FED("not fed"),
    /** A pipe on the way has no size yet. */
    NOT_SIZED("not sized"),
    /** The solver found no answer; no figures are given. */
    NOT_SOLVED("not solved");

    private final String label;

    RunStatus(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** Whether there are figures. */
    public boolean isSolved() {
        return this == RUNS || this == STARVED;
    }
}
