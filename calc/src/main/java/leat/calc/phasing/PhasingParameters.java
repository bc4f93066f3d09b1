package leat.calc.phasing;

/** Nothing to choose: phases are stated in the yard. */
public record PhasingParameters() {

    public static PhasingParameters defaults() {
        return new PhasingParameters();
    }
}
