package leat.model.power;

/** What is laid in this year's works for a thing that comes later. */
public enum Ahead {
    NOTHING,
    /** An empty conduit with a pull string. */
    CONDUIT,
    /** The conductors too, capped and tagged at their end. */
    WIRES
}
