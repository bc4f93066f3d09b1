package leat.draw;

/** An upright rectangle on the sheet, in millimetres; edges included. */
public record Box(double left, double top, double right, double bottom) {

    public Box {
        if (!(left <= right && top <= bottom)) {
            throw new IllegalArgumentException("box: " + left + " to " + right + " by " + top + " to " + bottom
                    + " mm; left must not exceed right, nor top bottom");
        }
    }

    public static Box around(double x, double y, double halfWidth, double halfHeight) {
        return new Box(x - halfWidth, y - halfHeight, x + halfWidth, y + halfHeight);
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }

    public double centreX() {
        return (left + right) / 2;
    }

    public double centreY() {
        return (top + bottom) / 2;
    }

    public Box grown(double byMm) {
        return new Box(left - byMm, top - byMm, right + byMm, bottom + byMm);
    }

    public Box union(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    public boolean contains(Box other) {
        return left <= other.left && top <= other.top && right >= other.right && bottom >= other.bottom;
    }

    /** Whether the insides meet; boxes that only touch do not. */
    public boolean overlaps(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /** Whether the straight line from (x1, y1) to (x2, y2) meets the inside (method of Liang and Barsky, 1984). */
    public boolean crossedBy(double x1, double y1, double x2, double y2) {
        double[] span = {0, 1};
        return clip(x1 - x2, x1 - left, span)
                && clip(x2 - x1, right - x1, span)
                && clip(y1 - y2, y1 - top, span)
                && clip(y2 - y1, bottom - y1, span)
                && span[0] < span[1];
    }

    private static boolean clip(double towards, double distance, double[] span) {
        if (towards == 0) {
            return distance > 0;
        }
        double at = distance / towards;
        if (towards < 0) {
            span[0] = Math.max(span[0], at);
        } else {
            span[1] = Math.min(span[1], at);
        }
        return span[0] <= span[1];
    }
}
