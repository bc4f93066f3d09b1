package leat.calc.schedule;

/** How the water use of the grass reference was found. */
public enum EvapotranspirationMethod {
    PENMAN_MONTEITH("FAO Penman-Monteith"),
    /** Where a month has temperatures alone. */
    HARGREAVES("Hargreaves, from temperatures alone");

    private final String label;

    EvapotranspirationMethod(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
