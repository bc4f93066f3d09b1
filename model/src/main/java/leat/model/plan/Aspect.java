package leat.model.plan;

/** What a stage may plan on a thing. Each is given (the user stated it) or planned (a stage may replace it). */
public enum Aspect {
    /** Where a head stands, with its family, arc and radius: the whole head. */
    POSITION,
    /** To which zone a head belongs; for a zone or a valve, that it exists at all. */
    ZONE,
    /** Where a pipe, a conduit, a cable or a trench runs: the whole of it. */
    ROUTE,
    /** The trade size of a pipe or a conduit, or the conductors of a cable. */
    SIZE,
    /** From which circuit something takes its power; for a circuit, that it exists at all. */
    CIRCUIT
}
