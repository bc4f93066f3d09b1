package leat.calc.placement.internal;

/**
 * A piece of a row that lies in the bed.
 *
 * @param level which row, counted along v; pieces of one row share it
 * @param halfM half the distance to the next row
 */
record DripRow(int level, double halfM, RowEnd left, RowEnd right) {

    double lengthM() {
        return right.uM() - left.uM();
    }

    RowEnd end(boolean atRight) {
        return atRight ? right : left;
    }
}
