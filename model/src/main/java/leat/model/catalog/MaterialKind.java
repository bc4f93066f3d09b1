package leat.model.catalog;

/** What sort of goods a material is; waste is stated by it. In the order in which goods are listed. */
public enum MaterialKind {
    PIPE("pipe"),
    FITTING("fitting"),
    VALVE("valve"),
    BOX("box"),
    HEAD("head"),
    BIB("hose bib"),
    BACKFLOW("backflow preventer"),
    CONDUIT("conduit"),
    CONDUIT_FITTING("conduit fitting"),
    WIRE("wire"),
    ELECTRICAL_BOX("electrical box"),
    ELECTRICAL_DEVICE("electrical device"),
    BEDDING("bedding"),
    MARKING("marking"),
    LABOUR("labour");

    private final String label;

    MaterialKind(String label) {
        this.label = label;
    }

    /** What a person calls it. */
    public String label() {
        return label;
    }

    /** Whether it is bought by length or volume and some of it is cut off or spilt; the others are counted. */
    public boolean isCut() {
        return this == PIPE || this == CONDUIT || this == WIRE || this == BEDDING || this == MARKING;
    }
}
