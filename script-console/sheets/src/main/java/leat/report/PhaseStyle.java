package leat.report;

import leat.draw.Colour;
import leat.draw.Dash;
import leat.draw.Legend;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.PenPath;
import leat.draw.Style;
import leat.model.site.Phase;

/** When a thing is built, told on every sheet by its line and not by its colour. */
enum PhaseStyle {
    NOW("this year's works: full line"),
    LATER("comes later: dashed line"),
    EXISTING("there already: thin grey line");

    private final String label;

    PhaseStyle(String label) {
        this.label = label;
    }

    static PhaseStyle of(Phase phase) {
        return phase == Phase.NOW ? NOW : LATER;
    }

    static PhaseStyle of(boolean existing, Phase phase) {
        return existing ? EXISTING : of(phase);
    }

    /** To end a title with. */
    String words() {
        return switch (this) {
            case NOW -> "";
            case LATER -> ", in a later year";
            case EXISTING -> ", existing";
        };
    }

    Style line(LineWidth width, Colour colour) {
        return switch (this) {
            case NOW -> Style.line(width, colour);
            case LATER -> Style.line(width, colour).withDash(Dash.DASHED);
            case EXISTING -> Style.line(LineWidth.W025, Palette.GREY);
        };
    }

    /** Of a symbol a few millimetres wide: what is there is grey, what comes later is empty. */
    Style symbol(LineWidth width, Colour fill) {
        return switch (this) {
            case NOW -> Style.line(width, Palette.BLACK).withFill(fill);
            case LATER ->
                Style.line(width, Palette.BLACK).withDash(Dash.SHORT_DASHED).withFill(Palette.WHITE);
            case EXISTING -> Style.line(LineWidth.W025, Palette.GREY).withFill(Palette.LIGHT_GREY);
        };
    }

    void explain(Legend legend) {
        legend.add(
                "0" + ordinal(),
                label,
                (c, box) -> c.shape(
                        PenPath.line(box.left(), box.centreY(), box.right(), box.centreY()),
                        line(LineWidth.W050, Palette.BLACK)));
    }
}
