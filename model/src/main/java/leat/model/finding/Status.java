package leat.model.finding;

/** How a calculation or a stage ended; says nothing about the quality of the design. */
public enum Status {
    /** All of it was done. */
    COMPLETE,
    /** Some of it could not be done; the reasons say what. */
    PARTIAL,
    /** Stopped from outside or at its effort; the best so far, never a final answer. */
    STOPPED
}
