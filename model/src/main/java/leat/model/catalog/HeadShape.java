package leat.model.catalog;

/** Which kind of head a family makes. */
public enum HeadShape {
    ROTOR("rotor"),
    SPRAY("spray"),
    BUBBLER("bubbler"),
    DRIP_LINE("drip line");

    private final String label;

    HeadShape(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
