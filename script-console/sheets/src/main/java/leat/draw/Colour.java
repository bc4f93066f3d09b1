package leat.draw;

/** An opaque colour, each part 0 to 255. */
public record Colour(int red, int green, int blue) {

    public Colour {
        if (((red | green | blue) & ~0xff) != 0) {
            throw new IllegalArgumentException(
                    "colour: parts are " + red + ", " + green + ", " + blue + "; each must be 0 to 255");
        }
    }

    /** From 0xRRGGBB. */
    public static Colour rgb(int rrggbb) {
        return new Colour(rrggbb >> 16 & 0xff, rrggbb >> 8 & 0xff, rrggbb & 0xff);
    }

    /** This colour mixed with white; 0 gives white, 1 this colour. */
    public Colour tint(double share) {
        return new Colour(mixed(red, share), mixed(green, share), mixed(blue, share));
    }

    /** This colour mixed with black, for letters, which need more contrast than lines; 0 gives this colour, 1 black. */
    public Colour shade(double share) {
        return new Colour((int) Math.rint(red * (1 - share)), (int) Math.rint(green * (1 - share)), (int)
                Math.rint(blue * (1 - share)));
    }

    private static int mixed(int part, double share) {
        return (int) Math.rint(255 - (255 - part) * share);
    }

    /** As {@code #rrggbb}. */
    public String hex() {
        return "#"
                + Integer.toHexString(0x1000000 | red << 16 | green << 8 | blue).substring(1);
    }
}
