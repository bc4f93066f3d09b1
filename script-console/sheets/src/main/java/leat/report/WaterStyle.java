package leat.report;

import java.util.Locale;
import leat.draw.Colour;
import leat.draw.Palette;
import leat.model.water.Water;

/** How the three waters look, on the plan and in every table: each has a colour and a letter of its own. */
enum WaterStyle {
    DRINKING(Water.DRINKING, Palette.BLUE, "D"),
    IRRIGATION(Water.IRRIGATION, Palette.GREEN, "IR"),
    NON_DRINKING(Water.NON_DRINKING, Palette.PURPLE, "N");

    private final Water water;
    private final Colour colour;
    private final String letter;

    WaterStyle(Water water, Colour colour, String letter) {
        this.water = water;
        this.colour = colour;
        this.letter = letter;
    }

    static WaterStyle of(Water water) {
        for (WaterStyle style : values()) {
            if (style.water == water) {
                return style;
            }
        }
        throw new AssertionError(water);
    }

    /** Classes of a table's field that says which water it is; empty for any other text. */
    static String cssOf(String text) {
        for (WaterStyle style : values()) {
            if (style.label().equals(text)) {
                return "water " + style.letter.toLowerCase(Locale.ROOT);
            }
        }
        return "";
    }

    Colour colour() {
        return colour;
    }

    /** The colour for letters: dark enough to read, 4.5 to 1 against white or better (WCAG 2.1, 1.4.3). */
    Colour lettering() {
        return colour.shade(0.4);
    }

    String letter() {
        return letter;
    }

    String label() {
        return water.label();
    }
}
