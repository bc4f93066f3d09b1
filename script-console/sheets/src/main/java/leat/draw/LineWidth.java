package leat.draw;

/** Widths of lines on paper: the series of ISO 128-2, whose steps are the square root of two (figures from memory). */
public enum LineWidth {
    W013(0.13),
    W018(0.18),
    W025(0.25),
    W035(0.35),
    W050(0.50),
    W070(0.70);

    private final double mm;

    LineWidth(double mm) {
        this.mm = mm;
    }

    public double mm() {
        return mm;
    }
}
