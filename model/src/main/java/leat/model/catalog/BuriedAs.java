package leat.model.catalog;

/** The columns of the table of covers: in what manner power or control lies in the ground. */
public enum BuriedAs {
    /** Sheathed cable or conductors for laying in the ground, without conduit. */
    CABLE,
    /** Rigid or intermediate metal conduit. */
    RIGID_METAL,
    /** Nonmetallic conduit for laying in the ground, or any other one. */
    OTHER_CONDUIT,
    /** A branch circuit of a dwelling, 120 V and 20 A at most, protected against ground faults at its origin. */
    PROTECTED_BRANCH,
    /** Control and lights of 30 V at most (50 V where the metric family counts so). */
    CONTROL
}
