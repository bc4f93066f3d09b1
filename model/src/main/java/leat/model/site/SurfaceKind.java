package leat.model.site;

/** What covers a piece of ground. */
public enum SurfaceKind {
    LAWN,
    BED,
    PAVING,
    STRUCTURE,
    /** Open water, such as a pond. */
    WATER;

    /** Whether water thrown there is wasted or does harm. */
    public boolean mustStayDry() {
        return this == PAVING || this == STRUCTURE;
    }
}
