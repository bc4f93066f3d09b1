package leat.draw;

import java.util.List;

/**
 * A cut sheet, upright. Sizes: ISO 216 and ANSI/ASME Y14.1. The border follows ISO 5457 (20 mm on the binding side, 10
 * mm elsewhere, from memory) and, for ANSI sheets, common practice (half an inch all round).
 */
public enum Paper {
    A4("A4", 210, 297, 20, 10),
    A3("A3", 297, 420, 20, 10),
    A2("A2", 420, 594, 20, 10),
    A1("A1", 594, 841, 20, 10),
    ANSI_A("ANSI A", 215.9, 279.4, 12.7, 12.7),
    ANSI_B("ANSI B", 279.4, 431.8, 12.7, 12.7),
    ANSI_C("ANSI C", 431.8, 558.8, 12.7, 12.7),
    ANSI_D("ANSI D", 558.8, 863.6, 12.7, 12.7);

    /** From small to large. */
    public static final List<Paper> ISO = List.of(A4, A3, A2, A1);

    /** From small to large. */
    public static final List<Paper> ANSI = List.of(ANSI_A, ANSI_B, ANSI_C, ANSI_D);

    private final String title;
    private final double widthMm;
    private final double heightMm;
    private final double bindingMm;
    private final double borderMm;

    Paper(String title, double widthMm, double heightMm, double bindingMm, double borderMm) {
        this.title = title;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.bindingMm = bindingMm;
        this.borderMm = borderMm;
    }

    public String title() {
        return title;
    }

    /** The shorter side. */
    public double widthMm() {
        return widthMm;
    }

    /** The longer side. */
    public double heightMm() {
        return heightMm;
    }

    /** Inside the border, with the binding at the left, for the sheet upright or lying. */
    public Box inside(boolean lying) {
        double width = lying ? heightMm : widthMm;
        double height = lying ? widthMm : heightMm;
        return new Box(bindingMm, borderMm, width - borderMm, height - borderMm);
    }
}
