package leat.draw;

import java.util.Arrays;

/**
 * Lines and circular arcs on the sheet, in millimetres; immutable. Made by a {@link Builder} or one of the factories.
 * Several closed parts make holes by the even-odd rule.
 */
public final class PenPath {

    /** What a back end has to draw, in order. */
    public interface Pen {
        void moveTo(double x, double y);

        void lineTo(double x, double y);

        /** A circular arc from where the pen is. */
        void arcTo(double radius, boolean large, boolean clockwise, double x, double y);

        void close();
    }

    private static final int MOVE = 0;
    private static final int LINE = 1;
    private static final int ARC = 2;
    private static final int CLOSE = 3;

    private final int[] steps;
    private final double[] numbers;
    private final Box bounds;

    private PenPath(Builder builder) {
        if (builder.stepCount == 0) {
            throw new IllegalArgumentException("path: it is empty; it must have at least one point");
        }
        steps = Arrays.copyOf(builder.steps, builder.stepCount);
        numbers = Arrays.copyOf(builder.numbers, builder.numberCount);
        bounds = new Box(builder.left, builder.top, builder.right, builder.bottom);
    }

    public static Builder builder() {
        return new Builder();
    }

    public static PenPath line(double x1, double y1, double x2, double y2) {
        return builder().moveTo(x1, y1).lineTo(x2, y2).build();
    }

    /** Through x, y, x, y …; open. */
    public static PenPath polyline(double... xy) {
        return builder().polyline(xy).build();
    }

    /** Through x, y, x, y … and back to the first. */
    public static PenPath polygon(double... xy) {
        return builder().polyline(xy).close().build();
    }

    public static PenPath box(Box box) {
        return polygon(
                box.left(), box.top(), box.right(), box.top(), box.right(), box.bottom(), box.left(), box.bottom());
    }

    public static PenPath circle(double x, double y, double radius) {
        return builder().circle(x, y, radius).build();
    }

    /**
     * An arc, with the two radii of its ends if it is a sector; a full turn gives a circle either way.
     *
     * @param startDegrees bearing of the start, clockwise from the top of the sheet
     * @param sweepDegrees clockwise, more than 0, at most 360
     */
    public static PenPath arc(
            double x, double y, double radius, double startDegrees, double sweepDegrees, boolean sector) {
        if (sweepDegrees >= 360) {
            return circle(x, y, radius);
        }
        double start = Math.toRadians(startDegrees);
        double end = Math.toRadians(startDegrees + sweepDegrees);
        Builder builder = builder();
        double startX = x + radius * Math.sin(start);
        double startY = y - radius * Math.cos(start);
        if (sector) {
            builder.moveTo(x, y).lineTo(startX, startY);
        } else {
            builder.moveTo(startX, startY);
        }
        builder.arcTo(radius, sweepDegrees > 180, true, x + radius * Math.sin(end), y - radius * Math.cos(end));
        builder.reach(x, y, radius);
        return sector ? builder.close().build() : builder.build();
    }

    /** A box that holds all of it; for arcs it may be larger than needed. */
    public Box bounds() {
        return bounds;
    }

    public void trace(Pen pen) {
        int next = 0;
        for (int step : steps) {
            switch (step) {
                case MOVE -> {
                    pen.moveTo(numbers[next], numbers[next + 1]);
                    next += 2;
                }
                case LINE -> {
                    pen.lineTo(numbers[next], numbers[next + 1]);
                    next += 2;
                }
                case ARC -> {
                    int flags = (int) numbers[next + 1];
                    pen.arcTo(numbers[next], (flags & 1) != 0, (flags & 2) != 0, numbers[next + 2], numbers[next + 3]);
                    next += 4;
                }
                default -> pen.close();
            }
        }
    }

    /** Collects the steps of a path; not reusable after {@link #build}. */
    public static final class Builder {

        private int[] steps = new int[8];
        private double[] numbers = new double[16];
        private int stepCount;
        private int numberCount;
        private double left = Double.POSITIVE_INFINITY;
        private double top = Double.POSITIVE_INFINITY;
        private double right = Double.NEGATIVE_INFINITY;
        private double bottom = Double.NEGATIVE_INFINITY;

        private Builder() {}

        public boolean isEmpty() {
            return stepCount == 0;
        }

        public Builder moveTo(double x, double y) {
            step(MOVE, x, y);
            reach(x, y, 0);
            return this;
        }

        public Builder lineTo(double x, double y) {
            step(LINE, x, y);
            reach(x, y, 0);
            return this;
        }

        public Builder arcTo(double radius, boolean large, boolean clockwise, double x, double y) {
            step(ARC, radius, (large ? 1 : 0) + (clockwise ? 2 : 0), x, y);
            reach(x, y, 0);
            return this;
        }

        public Builder close() {
            step(CLOSE);
            return this;
        }

        public Builder polyline(double... xy) {
            for (int i = 0; i + 1 < xy.length; i += 2) {
                if (i == 0) {
                    moveTo(xy[0], xy[1]);
                } else {
                    lineTo(xy[i], xy[i + 1]);
                }
            }
            return this;
        }

        public Builder circle(double x, double y, double radius) {
            moveTo(x - radius, y);
            arcTo(radius, false, true, x + radius, y);
            arcTo(radius, false, true, x - radius, y);
            reach(x, y, radius);
            return close();
        }

        public PenPath build() {
            return new PenPath(this);
        }

        private void reach(double x, double y, double radius) {
            left = Math.min(left, x - radius);
            top = Math.min(top, y - radius);
            right = Math.max(right, x + radius);
            bottom = Math.max(bottom, y + radius);
        }

        private void step(int kind, double... values) {
            if (stepCount == steps.length) {
                steps = Arrays.copyOf(steps, 2 * stepCount);
            }
            steps[stepCount++] = kind;
            if (numberCount + values.length > numbers.length) {
                numbers = Arrays.copyOf(numbers, 2 * numbers.length);
            }
            for (double value : values) {
                if (!Double.isFinite(value)) {
                    throw new IllegalArgumentException("path: a coordinate is " + value + "; it must be finite");
                }
                numbers[numberCount++] = value;
            }
        }
    }
}
