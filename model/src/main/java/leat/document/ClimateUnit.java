package leat.document;

/** A unit of a column: the model's figure is {@code (figure - zero) * factor}. */
record ClimateUnit(String symbol, double factor, double zero) {

    static final ClimateUnit FAHRENHEIT = new ClimateUnit("F", 5 / 9.0, 32);

    static ClimateUnit of(String symbol, double factor) {
        return new ClimateUnit(symbol, factor, 0);
    }

    double toModel(double figure) {
        return (figure - zero) * factor;
    }
}
