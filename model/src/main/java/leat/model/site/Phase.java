package leat.model.site;

/** When a thing is built. */
public enum Phase {
    /** In this year's works. */
    NOW,
    /** In a later year; drawn, and laid for where that saves a trench. */
    LATER
}
