package leat.model.power;

/** How the conductors of a circuit lie outdoors. */
public enum WiringMethod {
    /** Single conductors pulled into conduit. */
    IN_CONDUIT,
    /** A sheathed cable that may lie in the ground bare; conduit only where it happens to pass through one. */
    BURIED_CABLE
}
