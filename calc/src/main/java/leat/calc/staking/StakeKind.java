package leat.calc.staking;

/** What is marked by a stake, in the order of the list. */
public enum StakeKind {
    BACKFLOW("backflow preventer"),
    MANIFOLD("manifold"),
    BIB("hose bib"),
    HEAD("head"),
    POWER("power"),
    CORNER("trench");

    private final String label;

    StakeKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
