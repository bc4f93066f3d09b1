package leat.calc.placement.internal;

import leat.calc.internal.lines.Nearness;

/**
 * Lines in the ground that no head shall stand on, as long as the surface can be reached without.
 *
 * @param xM     east of the points of each line
 * @param yM     north of the points of each line
 * @param clearM kept from each line
 */
public record KeepOff(double[][] xM, double[][] yM, double[] clearM) {

    public static final KeepOff NOTHING = new KeepOff(new double[0][], new double[0][], new double[0]);

    boolean allows(double x, double y) {
        for (int line = 0; line < clearM.length; line++) {
            if (Nearness.pointToLineM(x, y, xM[line], yM[line]) < clearM[line]) {
                return false;
            }
        }
        return true;
    }

    boolean isNothing() {
        return clearM.length == 0;
    }
}
