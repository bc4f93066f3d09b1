package leat.draw;

/**
 * Turns metres of the yard (x east, y north) into millimetres of the sheet, north up.
 *
 * @param scale of the drawing
 * @param xMm where the yard's origin lies on the sheet
 * @param yMm where the yard's origin lies on the sheet
 */
public record View(Scale scale, double xMm, double yMm) {

    /** The middle of the given ground in the middle of the field. */
    public static View centred(Scale scale, Box field, double leftM, double bottomM, double rightM, double topM) {
        return new View(
                scale,
                field.centreX() - scale.mm((leftM + rightM) / 2),
                field.centreY() + scale.mm((bottomM + topM) / 2));
    }

    public double x(double eastM) {
        return xMm + scale.mm(eastM);
    }

    public double y(double northM) {
        return yMm - scale.mm(northM);
    }

    public double mm(double metres) {
        return scale.mm(metres);
    }
}
