package leat.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** An outline as straight sides; arcs become chords that leave the circle by less than a line's breadth. */
final class Rings implements PenPath.Pen {

    private static final double CHORD_RADIANS = Math.PI / 36;

    private final List<double[]> sides = new ArrayList<>();
    private double startX;
    private double startY;
    private double atX;
    private double atY;

    Rings(PenPath outline) {
        outline.trace(this);
        close();
    }

    @Override
    public void moveTo(double x, double y) {
        close();
        startX = x;
        startY = y;
        atX = x;
        atY = y;
    }

    @Override
    public void lineTo(double x, double y) {
        sides.add(new double[] {atX, atY, x, y});
        atX = x;
        atY = y;
    }

    @Override
    public void arcTo(double radius, boolean large, boolean clockwise, double x, double y) {
        double fromX = atX;
        double fromY = atY;
        double chord = Math.hypot(x - fromX, y - fromY);
        double half = Math.asin(Math.min(1, chord / 2 / radius));
        double sweep = large ? 2 * (Math.PI - half) : 2 * half;
        int pieces = (int) Math.ceil(sweep / CHORD_RADIANS);
        double away = radius * Math.cos(sweep / 2) * (clockwise ? 1 : -1);
        double centreX = (fromX + x) / 2 - (y - fromY) / chord * away;
        double centreY = (fromY + y) / 2 + (x - fromX) / chord * away;
        for (int i = 1; i < pieces; i++) {
            double turn = (clockwise ? sweep : -sweep) * i / pieces;
            double dx = fromX - centreX;
            double dy = fromY - centreY;
            lineTo(
                    centreX + dx * Math.cos(turn) - dy * Math.sin(turn),
                    centreY + dx * Math.sin(turn) + dy * Math.cos(turn));
        }
        lineTo(x, y);
    }

    @Override
    public void close() {
        if (atX != startX || atY != startY) {
            lineTo(startX, startY);
        }
    }

    /** The sides as they lie along (u) and across (v) rows of this angle, counter-clockwise from the sheet's right. */
    Turned turned(double degrees) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        double[][] uv = new double[sides.size()][];
        for (int i = 0; i < uv.length; i++) {
            double[] side = sides.get(i);
            uv[i] = new double[] {
                side[0] * cos - side[1] * sin,
                side[0] * sin + side[1] * cos,
                side[2] * cos - side[3] * sin,
                side[2] * sin + side[3] * cos
            };
        }
        return new Turned(cos, sin, uv);
    }

    record Turned(double cos, double sin, double[][] uv) {

        double left() {
            return Arrays.stream(uv).mapToDouble(side -> side[0]).min().orElse(0);
        }

        double right() {
            return Arrays.stream(uv).mapToDouble(side -> side[0]).max().orElse(0);
        }

        double low() {
            return Arrays.stream(uv).mapToDouble(side -> side[1]).min().orElse(0);
        }

        double high() {
            return Arrays.stream(uv).mapToDouble(side -> side[1]).max().orElse(0);
        }

        /** Where a row runs inside, by the even-odd rule: from, to, from, to …, rising. */
        double[] spans(double v) {
            return Arrays.stream(uv)
                    .filter(side -> side[1] <= v != side[3] <= v)
                    .mapToDouble(side -> side[0] + (v - side[1]) / (side[3] - side[1]) * (side[2] - side[0]))
                    .sorted()
                    .toArray();
        }
    }
}
