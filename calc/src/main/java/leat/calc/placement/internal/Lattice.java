package leat.calc.placement.internal;

/**
 * Places that are easy to measure: multiples of a part of a unit.
 *
 * @param unitM metres in the unit, more than 0
 * @param parts of the unit, at least 1; 10 for tenths of a foot
 */
public record Lattice(double unitM, int parts) {

    /** Smaller differences are those of sums of doubles. */
    private static final double SAME_M = 1e-6;

    double stepM() {
        return unitM / parts;
    }

    /** The nearest multiple, or one that many further; the same double that the unit gives for its figure. */
    double near(double metres, int further) {
        return (Math.rint(metres / stepM()) + further) / parts * unitM;
    }

    /** The multiple that a figure is but for the last digits of a double, else the figure. */
    double cleaned(double metres) {
        double nearest = near(metres, 0);
        return Math.abs(nearest - metres) < SAME_M ? nearest : metres;
    }
}
