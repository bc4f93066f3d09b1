package leat.report;

import java.util.Comparator;
import java.util.List;
import leat.draw.Colour;
import leat.draw.Palette;
import leat.model.power.Cable;
import leat.model.power.Conduit;
import leat.model.power.PowerSystem;
import leat.model.power.ValveCable;

/** How power, low voltage, control and empty conduits look: each has a colour and a letter. */
enum WireStyle {
    POWER("power", "P", Palette.VERMILION),
    LAMPS("low voltage", "L", Palette.GREEN),
    CONTROL("valve wires", "V", Palette.BLACK),
    SPARE("spare", "S", Palette.BLUE);

    private final String label;
    private final String letter;
    private final Colour colour;

    WireStyle(String label, String letter, Colour colour) {
        this.label = label;
        this.letter = letter;
        this.colour = colour;
    }

    static WireStyle of(PowerSystem power, Cable cable) {
        if (cable instanceof ValveCable) {
            return CONTROL;
        }
        return power.isFromPanel(cable) ? POWER : LAMPS;
    }

    /** By what passes through it; wires that lie in it already count as power, for nobody may take them for less. */
    static WireStyle of(PowerSystem power, Conduit conduit, List<Cable> held) {
        return held.stream()
                .map(one -> of(power, one))
                .min(Comparator.naturalOrder())
                .orElse(conduit.occupied().isEmpty() ? SPARE : POWER);
    }

    String label() {
        return label;
    }

    String letter() {
        return letter;
    }

    Colour colour() {
        return colour;
    }

    /** The colour for letters, 4.5 to 1 against white or better (WCAG 2.1, 1.4.3). */
    Colour lettering() {
        return colour.shade(0.4);
    }
}
