package leat.report;

import leat.draw.Colour;
import leat.draw.Hatch;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.Style;
import leat.model.site.SurfaceKind;

/** How covers of the ground look: faint, so that the pipes stand out, and each with a pattern of its own. */
enum SurfaceStyle {
    LAWN(SurfaceKind.LAWN, "lawn", Palette.GREEN.tint(0.06), hatch(Hatch.Pattern.TUFTS, 11, 0, Palette.GREEN)),
    BED(SurfaceKind.BED, "bed", Palette.ORANGE.tint(0.09), hatch(Hatch.Pattern.DOTS, 2.6, 45, Palette.ORANGE)),
    PAVING(
            SurfaceKind.PAVING,
            "paving",
            Palette.GREY.tint(0.06),
            hatch(Hatch.Pattern.CROSSED_LINES, 3.6, 0, Palette.GREY)),
    STRUCTURE(
            SurfaceKind.STRUCTURE,
            "structure",
            Palette.GREY.tint(0.22),
            hatch(Hatch.Pattern.LINES, 2.2, 45, Palette.GREY)),
    WATER(SurfaceKind.WATER, "open water", Palette.SKY.tint(0.16), hatch(Hatch.Pattern.LINES, 2.4, 0, Palette.SKY));

    private final SurfaceKind kind;
    private final String label;
    private final Colour fill;
    private final Hatch hatch;

    SurfaceStyle(SurfaceKind kind, String label, Colour fill, Hatch hatch) {
        this.kind = kind;
        this.label = label;
        this.fill = fill;
        this.hatch = hatch;
    }

    private static Hatch hatch(Hatch.Pattern pattern, double spacingMm, double angleDegrees, Colour colour) {
        return new Hatch(pattern, spacingMm, angleDegrees, LineWidth.W013, colour.tint(0.55));
    }

    static SurfaceStyle of(SurfaceKind kind) {
        for (SurfaceStyle style : values()) {
            if (style.kind == kind) {
                return style;
            }
        }
        throw new AssertionError(kind);
    }

    String label() {
        return label;
    }

    Style style() {
        LineWidth edge = kind == SurfaceKind.STRUCTURE ? LineWidth.W050 : LineWidth.W018;
        return Style.line(edge, Palette.DARK_GREY).withFill(fill).withHatch(hatch);
    }
}
