package leat.calc.placement.internal;

import java.util.ArrayList;
import java.util.List;

/** Cuts a line that is too long into pieces of about the same length. */
final class LineCuts {

    /** Rounding a cut to the lattice makes a piece a little longer. */
    private static final double SPARE_M = 0.1;

    private LineCuts() {}

    /** @param xyM x0, y0, x1, y1, … */
    static List<double[]> of(double[] xyM, double mostM, Lattice lattice) {
        double wholeM = 0;
        for (int i = 2; i < xyM.length; i += 2) {
            wholeM += sideM(xyM, i);
        }
        return wholeM <= mostM ? List.of(xyM) : cut(xyM, wholeM / Math.ceil(wholeM / (mostM - SPARE_M)), lattice);
    }

    private static double sideM(double[] xyM, int i) {
        return Math.hypot(xyM[i] - xyM[i - 2], xyM[i + 1] - xyM[i - 1]);
    }

    private static List<double[]> cut(double[] xyM, double pieceM, Lattice lattice) {
        List<double[]> lines = new ArrayList<>();
        List<Double> line = new ArrayList<>(List.of(xyM[0], xyM[1]));
        double usedM = 0;
        for (int i = 2; i < xyM.length; i += 2) {
            double leftM = sideM(xyM, i);
            double fromXM = xyM[i - 2];
            double fromYM = xyM[i - 1];
            while (usedM + leftM > pieceM + SPARE_M / 2) {
                double share = (pieceM - usedM) / leftM;
                double atXM = lattice.near(fromXM + share * (xyM[i] - fromXM), 0);
                double atYM = lattice.near(fromYM + share * (xyM[i + 1] - fromYM), 0);
                add(line, atXM, atYM);
                finish(lines, line);
                line = new ArrayList<>(List.of(atXM, atYM));
                leftM = Math.hypot(xyM[i] - atXM, xyM[i + 1] - atYM);
                fromXM = atXM;
                fromYM = atYM;
                usedM = 0;
            }
            add(line, xyM[i], xyM[i + 1]);
            usedM += leftM;
        }
        finish(lines, line);
        return lines;
    }

    private static void add(List<Double> line, double xM, double yM) {
        int size = line.size();
        if (line.get(size - 2) != xM || line.get(size - 1) != yM) {
            line.add(xM);
            line.add(yM);
        }
    }

    private static void finish(List<double[]> lines, List<Double> line) {
        if (line.size() >= 4) {
            lines.add(line.stream().mapToDouble(Double::doubleValue).toArray());
        }
    }
}
