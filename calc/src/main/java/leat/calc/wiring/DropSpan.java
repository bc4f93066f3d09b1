package leat.calc.wiring;

/** The part of the way from the origin to a load over which voltage is lost. */
public enum DropSpan {
    /** From the panel of the circuit to the load. */
    BRANCH,
    /** From the panel at the origin to the panel of a structure. */
    FEEDER,
    /** Both together. */
    TOTAL
}
