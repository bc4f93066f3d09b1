package leat.calc.digging;

import leat.model.finding.Citation;
import leat.model.finding.Standing;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;

/**
 * What the law of the United States asks of employers about trenches; a careful owner takes it as the least. The depths
 * at which it begins are the rules {@code digging.depth.exit} and {@code digging.depth.support}.
 */
public final class DigLaw {

    public static final Citation SOURCE =
            new Citation("OSHA 29 CFR 1926 subpart P, 1926.651 and 1926.652, appendix B", Standing.PUBLISHED);

    /** Greatest way sideways to a ladder, 1926.651(c)(2). */
    public static final Length MOST_TO_EXIT = Length.feet(25);

    /** Spoil and plant stay so far back from the edge, 1926.651(j)(2). */
    public static final Length SPOIL_SETBACK = Length.feet(2);

    /** Beyond this a registered engineer designs what holds the sides, appendix B. */
    public static final Length ENGINEER_DEPTH = Length.feet(20);

    /** Steepest sides, run for each unit of rise, in stiff clay; table B-1. */
    public static final Ratio SLOPE_TYPE_A = Ratio.of(0.75);

    /** The same in silt, sandy clay and earth that was dug before. */
    public static final Ratio SLOPE_TYPE_B = Ratio.of(1);

    /** The same in sand and wet earth, and wherever nobody classified the soil. */
    public static final Ratio SLOPE_TYPE_C = Ratio.of(1.5);

    private DigLaw() {}
}
