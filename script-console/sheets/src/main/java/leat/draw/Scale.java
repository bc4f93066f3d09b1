package leat.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * How much smaller the sheet is than the ground.
 *
 * @param ratio millimetres on the ground for one on paper; more than 0
 * @param text as a draughtsman writes it
 */
public record Scale(double ratio, String text) {

    /** Scales of ISO 5455 (from memory), from large to small; they go on by 1, 2 and 5 as far as a lot may need. */
    public static final List<Scale> METRIC = metric();

    /** Architect's and engineer's scales of US practice (no source), from large to small. */
    public static final List<Scale> US = us();

    public Scale {
        if (!(ratio > 0)) {
            throw new IllegalArgumentException("scale " + text + ": ratio is " + ratio + "; it must be more than 0");
        }
    }

    /** Millimetres on the sheet. */
    public double mm(double metres) {
        return metres * 1000 / ratio;
    }

    private static List<Scale> metric() {
        List<Scale> scales = new ArrayList<>();
        for (int ratio : new int[] {50, 100, 200, 500, 1_000, 2_000, 5_000, 10_000, 20_000, 50_000, 100_000}) {
            scales.add(new Scale(ratio, "1:" + ratio));
        }
        return List.copyOf(scales);
    }

    private static List<Scale> us() {
        List<Scale> scales = new ArrayList<>();
        scales.add(new Scale(48, "1/4\" = 1'-0\""));
        scales.add(new Scale(96, "1/8\" = 1'-0\""));
        scales.add(new Scale(120, "1\" = 10'"));
        scales.add(new Scale(192, "1/16\" = 1'-0\""));
        for (int feet : new int[] {20, 30, 40, 50, 60, 100, 200, 500, 1_000, 2_000, 5_000, 10_000}) {
            scales.add(new Scale(12.0 * feet, "1\" = " + feet + "'"));
        }
        return List.copyOf(scales);
    }
}
