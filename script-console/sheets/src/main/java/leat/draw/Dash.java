package leat.draw;

import java.util.Arrays;
import java.util.List;

/** Patterns of lines, in millimetres of mark and gap. Lengths are our own; each reads as its name at arm's length. */
public enum Dash {
    SOLID,
    DASHED(2.4, 1.2),
    LONG_DASHED(6, 1.4),
    SHORT_DASHED(1.2, 0.8),
    DOTTED(0.3, 0.9),
    DASH_DOT(4.5, 1, 0.4, 1),
    DASH_DOT_DOT(4.5, 0.9, 0.4, 0.9, 0.4, 0.9),
    /** For boundaries: a long mark between two short ones. */
    BOUNDARY(9, 1.2, 1.6, 1.2, 1.6, 1.2);

    private final List<Double> lengthsMm;

    Dash(double... lengthsMm) {
        this.lengthsMm = Arrays.stream(lengthsMm).boxed().toList();
    }

    /** Mark, gap, mark, gap …; empty for a line without gaps. */
    public List<Double> lengthsMm() {
        return lengthsMm;
    }
}
