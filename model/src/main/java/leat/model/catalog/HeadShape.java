package leat.model.catalog;

/** Which kind of head a family makes. */
public enum HeadShape {
    ROTOR,
    SPRAY,
    BUBBLER,
    DRIP_LINE
}
