package leat.script;

/**
 * A script's value turned into what a Java parameter takes.
 *
 * @param value the Java value
 * @param cost  0 for the very thing; more for each step of reinterpretation, so that overloads can be compared
 */
record Fit(Object value, int cost) {

    Fit atLeast(int otherCost) {
        return otherCost > cost ? new Fit(value, otherCost) : this;
    }
}
