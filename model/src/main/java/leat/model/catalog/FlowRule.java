package leat.model.catalog;

/** What the flow of a head goes with, besides the pressure. */
public enum FlowRule {
    /** The nozzle alone. */
    FIXED,
    /** The nozzle's flow at full circle times the share of the circle. */
    BY_ARC,
    /** As {@link #BY_ARC}, times the square of the share of the full radius: the depth rate stays the same. */
    BY_AREA,
    /** The flow of a metre times the length of the line. */
    PER_LENGTH
}
