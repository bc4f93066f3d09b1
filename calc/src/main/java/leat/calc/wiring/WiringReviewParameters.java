package leat.calc.wiring;

/** Nothing to choose yet: all limits are rules, and the yard may state its own. */
public record WiringReviewParameters() {

    public static WiringReviewParameters defaults() {
        return new WiringReviewParameters();
    }
}
