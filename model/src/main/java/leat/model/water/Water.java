package leat.model.water;

/** Which water a pipe carries. The three never rejoin, and drawings, schedules and labels tell them apart. */
public enum Water {
    DRINKING("drinking water"),
    /** Behind the backflow preventer: must never flow back. */
    IRRIGATION("irrigation water"),
    /** From a tank, a well or a pond: never joined to drinking water. */
    NON_DRINKING("non-drinking water");

    private final String label;

    Water(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
