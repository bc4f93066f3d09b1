package leat.calc.internal.routes;

/**
 * A piece of ground: rings of corners, the outer one first and its holes after it, in either direction, not closed by a
 * repeated corner.
 *
 * @param xM east of each corner of each ring
 * @param yM north of each corner of each ring
 */
public record Patch(double[][] xM, double[][] yM) {

    /** A patch without holes. */
    public static Patch of(double[] xM, double[] yM) {
        return new Patch(new double[][] {xM}, new double[][] {yM});
    }
}
