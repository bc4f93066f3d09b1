package leat.model.site;

/** What covers a piece of ground. */
public enum SurfaceKind {
    LAWN,
    BED,
    PAVING,
    STRUCTURE,
    /** Open water, such as a pond. */
    WATER;

    /** Where surfaces lie over each other the highest counts: buildings lie on paving, paving on water, water on beds, beds on lawns. */
    public int rank() {
        return switch (this) {
            case LAWN -> 0;
            case BED -> 1;
            case WATER -> 2;
            case PAVING -> 3;
            case STRUCTURE -> 4;
        };
    }

    /** Whether water thrown there is wasted or does harm. */
    public boolean mustStayDry() {
        return this == PAVING || this == STRUCTURE;
    }
}
