package leat.draw;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Chooses sheet and scale: the smallest sheet on which the ground fits at 1:100 (US: 1" = 10') or larger, and on that
 * sheet the largest scale. Ground that is too large for that gets the largest sheet and the largest scale that fits.
 *
 * @param paper the sheet
 * @param lying whether the long side lies at the foot
 * @param scale of the plan
 * @param frame inside the border
 * @param field where the plan stands
 * @param column beside the field, for title block, legend and the like
 * @param view from metres to the sheet, with the ground in the middle of the field
 */
public record SheetFit(Paper paper, boolean lying, Scale scale, Box frame, Box field, Box column, View view) {

    /** Width of the column beside the plan. */
    public static final double COLUMN_MM = 84;

    /** Kept free around the ground for distances, bearings and labels. */
    private static final double CLEAR_MM = 9;

    private static final double LEAST_WANTED_METRIC = 100;
    private static final double LEAST_WANTED_US = 120;

    /**
     * A fit for ground between these corners.
     *
     * @param us US sheets and scales, or else ISO's
     */
    public static SheetFit choose(boolean us, double leftM, double bottomM, double rightM, double topM) {
        return choose(us, leftM, bottomM, rightM, topM, 0);
    }

    /**
     * A fit whose column is at least so high, unless the largest sheet has a lower one.
     *
     * @param columnMm what title block, legend and the rest need
     */
    public static SheetFit choose(
            boolean us, double leftM, double bottomM, double rightM, double topM, double columnMm) {
        List<Paper> papers = us ? Paper.ANSI : Paper.ISO;
        double wanted = us ? LEAST_WANTED_US : LEAST_WANTED_METRIC;
        for (Paper paper : papers) {
            SheetFit fit = on(paper, us, leftM, bottomM, rightM, topM);
            if (fit.scale.ratio() <= wanted && fit.column.height() >= columnMm) {
                return fit;
            }
        }
        return on(papers.get(papers.size() - 1), us, leftM, bottomM, rightM, topM);
    }

    /** The largest scale at which the ground fits on the given sheet, lying or upright; lying if both serve. */
    public static SheetFit on(Paper paper, boolean us, double leftM, double bottomM, double rightM, double topM) {
        for (Scale scale : us ? Scale.US : Scale.METRIC) {
            SheetFit fit = at(scale, paper, leftM, bottomM, rightM, topM);
            if (fit != null) {
                return fit;
            }
        }
        for (double ratio = 1_000_000; Double.isFinite(ratio); ratio *= 10) {
            Scale scale = new Scale(ratio, String.format(Locale.ROOT, "1:%.0f", ratio));
            SheetFit fit = at(scale, paper, leftM, bottomM, rightM, topM);
            if (fit != null) {
                return fit;
            }
        }
        throw new IllegalArgumentException(
                "sheet: the ground is " + (rightM - leftM) + " m by " + (topM - bottomM) + " m; it must be finite");
    }

    /** The ground on this sheet at this scale, lying if both serve; null if it does not fit. */
    private static @Nullable SheetFit at(
            Scale scale, Paper paper, double leftM, double bottomM, double rightM, double topM) {
        for (boolean lying : new boolean[] {true, false}) {
            Box frame = paper.inside(lying);
            Box column = new Box(frame.right() - COLUMN_MM, frame.top(), frame.right(), frame.bottom());
            Box field = new Box(frame.left(), frame.top(), column.left(), frame.bottom());
            if (scale.mm(rightM - leftM) + 2 * CLEAR_MM <= field.width()
                    && scale.mm(topM - bottomM) + 2 * CLEAR_MM <= field.height()) {
                View view = View.centred(scale, field, leftM, bottomM, rightM, topM);
                return new SheetFit(paper, lying, scale, frame, field, column, view);
            }
        }
        return null;
    }

    public double widthMm() {
        return lying ? paper.heightMm() : paper.widthMm();
    }

    public double heightMm() {
        return lying ? paper.widthMm() : paper.heightMm();
    }
}
