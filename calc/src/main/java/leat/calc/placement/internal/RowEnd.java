package leat.calc.placement.internal;

/**
 * A place on the line along which rows end, in the frame of the rows.
 *
 * @param ring     which line
 * @param stationM how far along it
 */
record RowEnd(int ring, double stationM, double uM, double vM) {}
