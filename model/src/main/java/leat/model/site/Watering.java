package leat.model.site;

/** How a planted surface wants its water. */
public enum Watering {
    /** From heads above ground; a lawn wants each spot within reach of two. */
    HEADS,
    /** From drip lines or bubblers at the plants. */
    DRIP,
    /** Rain and the hose. */
    NONE
}
