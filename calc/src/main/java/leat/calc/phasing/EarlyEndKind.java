package leat.calc.phasing;

/** How what is laid now ends until what comes later is there. */
public enum EarlyEndKind {
    /** The end of a pipe, or the free branch of a tee in it. */
    PIPE("capped, tagged"),
    /** The outlet of a zone valve. */
    VALVE("plugged, tagged"),
    /** An empty conduit with its pull string. */
    CONDUIT("capped, pull string in, tagged"),
    /** Conductors that lead to nothing yet: never live. */
    WIRES("ends insulated one by one, in a box, tagged, not connected at the panel");

    private final String label;

    EarlyEndKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
