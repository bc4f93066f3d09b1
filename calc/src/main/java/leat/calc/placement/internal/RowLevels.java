package leat.calc.placement.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * Where rows lie: evenly in the bed, the first half a distance from its edge. Where the bed has a side along the rows, as an L has
 * in its corner, rows begin anew, so that this side too has a row within half a distance.
 *
 * @param vM    of each row, rising
 * @param halfM half the distance between the rows there
 */
record RowLevels(double[] vM, double[] halfM) {

    /** A side that rises by less from end to end runs along the rows. */
    private static final double LEVEL_M = 0.05;

    /** Rounding must not cost a row. */
    private static final double SPARE_ROWS = 1e-6;

    /**
     * @param ringsM   border of the bed in the frame of the rows
     * @param spacingM most distance between rows
     * @param leastM   a side nearer than that to another counts as on its level
     */
    static RowLevels of(List<double[]> ringsM, double spacingM, double leastM) {
        TreeSet<Double> sides = new TreeSet<>();
        double lowM = Double.POSITIVE_INFINITY;
        double highM = Double.NEGATIVE_INFINITY;
        for (double[] ringM : ringsM) {
            for (int i = 0, before = ringM.length - 2; i < ringM.length; before = i, i += 2) {
                lowM = Math.min(lowM, ringM[i + 1]);
                highM = Math.max(highM, ringM[i + 1]);
                boolean isLevel = Math.abs(ringM[i + 1] - ringM[before + 1]) < LEVEL_M;
                if (isLevel && Math.abs(ringM[i] - ringM[before]) >= spacingM) {
                    sides.add((ringM[i + 1] + ringM[before + 1]) / 2);
                }
            }
        }
        List<Double> bands = new ArrayList<>(List.of(lowM));
        for (double sideM : sides) {
            if (sideM - bands.get(bands.size() - 1) >= leastM && highM - sideM >= leastM) {
                bands.add(sideM);
            }
        }
        bands.add(highM);
        return within(bands, spacingM);
    }

    private static RowLevels within(List<Double> bands, double spacingM) {
        List<double[]> rows = new ArrayList<>();
        for (int band = 1; band < bands.size(); band++) {
            double fromM = bands.get(band - 1);
            double heightM = bands.get(band) - fromM;
            int count = Math.max(1, (int) Math.ceil(heightM / spacingM - SPARE_ROWS));
            for (int i = 0; i < count; i++) {
                rows.add(new double[] {fromM + (i + 0.5) * heightM / count, heightM / count / 2});
            }
        }
        return new RowLevels(
                rows.stream().mapToDouble(row -> row[0]).toArray(),
                rows.stream().mapToDouble(row -> row[1]).toArray());
    }

    /** The pieces of all rows within the edge, from the first row on and from left to right. */
    List<DripRow> rows(List<EdgeRing> edge, double leastM) {
        List<DripRow> rows = new ArrayList<>();
        for (int level = 0; level < vM.length; level++) {
            List<RowEnd> ends = new ArrayList<>();
            for (EdgeRing ring : edge) {
                ring.addCrossings(vM[level], ends);
            }
            ends.sort(Comparator.comparingDouble(RowEnd::uM));
            for (int i = 0; i + 1 < ends.size(); i += 2) {
                DripRow row = new DripRow(level, halfM[level], ends.get(i), ends.get(i + 1));
                if (row.lengthM() >= leastM) {
                    rows.add(row);
                }
            }
        }
        return rows;
    }
}
