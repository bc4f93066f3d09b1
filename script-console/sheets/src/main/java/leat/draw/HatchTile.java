package leat.draw;

/** The one tile that a hatch repeats, as SVG path data in the square from 0 to the spacing. */
final class HatchTile {

    private HatchTile() {}

    static String data(Hatch hatch) {
        String size = Numbers.mm(hatch.spacingMm());
        String half = Numbers.mm(hatch.spacingMm() / 2);
        return switch (hatch.pattern()) {
            case LINES -> "M0 " + half + "H" + size;
            case CROSSED_LINES -> "M0 " + half + "H" + size + "M" + half + " 0V" + size;
            case DOTS -> "M" + half + " " + half + "h0";
            case TUFTS -> tufts(hatch.spacingMm());
        };
    }

    /** Two tufts of three blades, set like bricks. */
    private static String tufts(double spacingMm) {
        return tuft(spacingMm / 4, spacingMm / 4) + tuft(spacingMm * 3 / 4, spacingMm * 3 / 4);
    }

    private static String tuft(double x, double y) {
        String foot = Numbers.mm(x) + " " + Numbers.mm(y + 0.4);
        return "M" + foot + "v-1.1M" + foot + "l-0.6 -0.8M" + foot + "l0.6 -0.8";
    }

    /** Dots are points with round caps, three times as wide as a line, or they would not print. */
    static double strokeMm(Hatch hatch) {
        return hatch.pattern() == Hatch.Pattern.DOTS
                ? 3 * hatch.width().mm()
                : hatch.width().mm();
    }
}
