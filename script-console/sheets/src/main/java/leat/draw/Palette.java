package leat.draw;

import java.util.List;

/**
 * The colours of our drawings. Categories come from Okabe and Ito, "Color Universal Design" (2008), which people with
 * the common kinds of colour blindness can tell apart; classes of a quantity from YlGnBu by Cynthia Brewer
 * (ColorBrewer, 2002; this product includes color specifications and designs developed by Cynthia Brewer,
 * http://colorbrewer.org/), the first seven of its nine classes. No meaning is ever given by colour alone.
 */
public final class Palette {

    public static final Colour BLACK = Colour.rgb(0x000000);
    public static final Colour WHITE = Colour.rgb(0xffffff);
    public static final Colour BLUE = Colour.rgb(0x0072b2);
    public static final Colour VERMILION = Colour.rgb(0xd55e00);
    public static final Colour GREEN = Colour.rgb(0x009e73);
    public static final Colour PURPLE = Colour.rgb(0xcc79a7);
    public static final Colour SKY = Colour.rgb(0x56b4e9);
    public static final Colour ORANGE = Colour.rgb(0xe69f00);

    /** Pencil greys for everything that is not the subject of the sheet. */
    public static final Colour DARK_GREY = Colour.rgb(0x444444);

    public static final Colour GREY = Colour.rgb(0x808080);
    public static final Colour LIGHT_GREY = Colour.rgb(0xc8c8c8);

    /** In the order in which categories take them. */
    public static final List<Colour> CATEGORIES = List.of(BLUE, VERMILION, GREEN, PURPLE, SKY, ORANGE, BLACK);

    /** From least to most. */
    public static final List<Colour> HEAT = List.of(
            Colour.rgb(0xffffd9),
            Colour.rgb(0xedf8b1),
            Colour.rgb(0xc7e9b4),
            Colour.rgb(0x7fcdbb),
            Colour.rgb(0x41b6c4),
            Colour.rgb(0x1d91c0),
            Colour.rgb(0x225ea8));

    private Palette() {}
}
