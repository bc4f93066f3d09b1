package leat.calc.trenching;

/** Nothing to choose yet: all limits are rules, and the yard may state its own. */
public record TrenchReviewParameters() {

    public static TrenchReviewParameters defaults() {
        return new TrenchReviewParameters();
    }
}
