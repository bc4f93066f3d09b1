package leat.calc.staking;

/** On which side a stake lies when one looks from the first mark to the second: two circles meet twice. */
public enum TieSide {
    LEFT("left"),
    RIGHT("right");

    private final String label;

    TieSide(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
