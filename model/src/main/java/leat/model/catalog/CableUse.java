package leat.model.catalog;

/** What a sheathed cable is made for. */
public enum CableUse {
    /** Circuits of a panel: a grounding conductor lies beside its strands. */
    POWER,
    /** Valve wires. */
    CONTROL,
    /** Lamps of low voltage: two strands. */
    LAMPS
}
