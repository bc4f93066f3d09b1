package leat.model.catalog;

/** The rows of the table of covers: what lies above. */
public enum BuriedUnder {
    /** Lawn, bed, and whatever is not named below. */
    OPEN_GROUND,
    /** In a trench below 50 mm (2 in) of concrete. */
    CONCRETE,
    BUILDING,
    /** A slab of 100 mm (4 in) or more without vehicles. */
    SLAB,
    STREET,
    /** Drive and parking place of a dwelling. */
    DRIVEWAY
}
