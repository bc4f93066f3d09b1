package leat.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds room for labels: none overlaps another, nor a box that was declared taken; lines are avoided where possible.
 * Greedy: labels are placed by priority, then by id, each at the cheapest of the places tried around its anchor, near
 * before far. The same labels give the same places.
 */
public final class LabelPlacer {

    /**
     * A label that wants room.
     *
     * @param id names it, and decides between equals
     * @param x of what it names
     * @param y of what it names
     * @param clearMm from there to where labels may begin; 0 for a label that may stand right on the place
     * @param widthMm of the label
     * @param heightMm of the label
     * @param priority lower is placed earlier
     */
    public record Label(String id, double x, double y, double clearMm, double widthMm, double heightMm, int priority) {}

    /**
     * A label with its room.
     *
     * @param label as asked
     * @param box where it stands
     * @param leader whether it stands so far off that a line should lead to it
     */
    public record Placed(Label label, Box box, boolean leader) {

        /** Where a leader ends at the label. */
        public double leaderX() {
            return Math.min(Math.max(label.x(), box.left()), box.right());
        }

        public double leaderY() {
            return Math.min(Math.max(label.y(), box.top()), box.bottom());
        }
    }

    /** Labels with room, in the order of placing, and those for which none was found. */
    public record Placement(List<Placed> placed, List<Label> withoutRoom) {}

    private record Segment(double x1, double y1, double x2, double y2) {

        boolean crosses(Segment other) {
            return side(other.x1, other.y1) * side(other.x2, other.y2) < 0
                    && other.side(x1, y1) * other.side(x2, y2) < 0;
        }

        boolean meets(Box box) {
            return box.crossedBy(x1, y1, x2, y2);
        }

        private double side(double x, double y) {
            return (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1);
        }
    }

    private static final double[] RINGS_MM = {0, 1.5, 3, 5, 8, 11, 15, 20, 26, 33, 42, 55, 75};
    private static final double LEADER_FROM_MM = 3.5;
    private static final double LINE_COST = 2.2;
    private static final double LEADER_CROSSING_COST = 4;
    private static final double PAD_MM = 0.35;

    /** East first, then the corners, then straight up and down, then between. */
    private static final double[] DIRECTIONS_DEGREES = {
        90, 45, 135, 270, 315, 225, 0, 180, 67.5, 112.5, 22.5, 157.5, 247.5, 292.5, 337.5, 202.5
    };

    private final Box field;
    private final List<Box> taken = new ArrayList<>();
    private final List<Box> placedBoxes = new ArrayList<>();
    private final List<Segment> lines = new ArrayList<>();
    private final List<Segment> leaders = new ArrayList<>();

    /** Places labels inside the field only. */
    public LabelPlacer(Box field) {
        this.field = field;
    }

    /** No label may overlap this box. */
    public LabelPlacer take(Box box) {
        taken.add(box);
        return this;
    }

    /** Whether nothing was declared taken here. */
    public boolean isFree(Box box) {
        return field.contains(box) && taken.stream().noneMatch(box::overlaps);
    }

    /** Labels rather stay off this line. */
    public LabelPlacer avoid(double x1, double y1, double x2, double y2) {
        lines.add(new Segment(x1, y1, x2, y2));
        return this;
    }

    /** Finds room; what is placed counts as taken in later calls. */
    public Placement place(List<Label> labels) {
        List<Label> order = new ArrayList<>(labels);
        order.sort(Comparator.comparingInt(Label::priority).thenComparing(Label::id));
        List<Placed> placed = new ArrayList<>();
        List<Label> withoutRoom = new ArrayList<>();
        for (Label label : order) {
            Placed best = best(label, true);
            if (best == null) {
                best = best(label, false);
            }
            if (best == null) {
                withoutRoom.add(label);
                continue;
            }
            placed.add(best);
            placedBoxes.add(best.box().grown(PAD_MM));
            if (best.leader()) {
                leaders.add(leader(best));
            }
        }
        return new Placement(List.copyOf(placed), List.copyOf(withoutRoom));
    }

    private @Nullable Placed best(Label label, boolean strict) {
        Placed best = null;
        double least = Double.POSITIVE_INFINITY;
        if (label.clearMm() == 0) {
            Box box = Box.around(label.x(), label.y(), label.widthMm() / 2, label.heightMm() / 2);
            Placed candidate = new Placed(label, box, false);
            if (isFree(candidate, strict)) {
                best = candidate;
                least = softCost(candidate);
            }
        }
        for (double ringMm : RINGS_MM) {
            if (ringMm >= least) {
                break;
            }
            for (int i = 0; i < DIRECTIONS_DEGREES.length; i++) {
                Placed candidate = candidate(label, ringMm, DIRECTIONS_DEGREES[i]);
                if (!isFree(candidate, strict)) {
                    continue;
                }
                double cost = ringMm + 0.05 * i + softCost(candidate);
                if (cost < least) {
                    least = cost;
                    best = candidate;
                }
            }
        }
        return best;
    }

    private static Placed candidate(Label label, double ringMm, double directionDegrees) {
        double direction = Math.toRadians(directionDegrees);
        double right = Math.sin(direction);
        double down = -Math.cos(direction);
        double offMm = label.clearMm() + ringMm;
        double x = label.x() + right * offMm + side(right) * label.widthMm() / 2;
        double y = label.y() + down * offMm + side(down) * label.heightMm() / 2;
        Box box = Box.around(x, y, label.widthMm() / 2, label.heightMm() / 2);
        return new Placed(label, box, ringMm >= LEADER_FROM_MM);
    }

    /** Towards a corner the label stands with its corner, straight on with its middle, in between in between. */
    private static double side(double share) {
        return Math.max(-1, Math.min(1, share * Math.sqrt(2)));
    }

    /** In a crowd the second try, not strict, lets leaders cross each other and symbols, but never a label. */
    private boolean isFree(Placed candidate, boolean strict) {
        Box box = candidate.box();
        if (!field.contains(box) || taken.stream().anyMatch(box::overlaps)) {
            return false;
        }
        if (placedBoxes.stream().anyMatch(box::overlaps)) {
            return false;
        }
        for (Segment leader : leaders) {
            if (leader.meets(box)) {
                return false;
            }
        }
        return !candidate.leader() || isFree(leader(candidate), candidate.label(), strict);
    }

    private boolean isFree(Segment leader, Label label, boolean strict) {
        if (placedBoxes.stream().anyMatch(leader::meets)) {
            return false;
        }
        if (!strict) {
            return true;
        }
        // A leader may start inside the box that was taken around its own anchor.
        Box anchor = Box.around(label.x(), label.y(), 0.01, 0.01);
        return leaders.stream().noneMatch(leader::crosses)
                && taken.stream().noneMatch(other -> !other.overlaps(anchor) && leader.meets(other));
    }

    private double softCost(Placed candidate) {
        double cost = 0;
        Segment leader = candidate.leader() ? leader(candidate) : null;
        for (Segment line : lines) {
            if (line.meets(candidate.box())) {
                cost += LINE_COST;
            }
            if (leader != null && leader.crosses(line)) {
                cost += LEADER_CROSSING_COST;
            }
        }
        return cost;
    }

    private static Segment leader(Placed placed) {
        Label label = placed.label();
        return new Segment(label.x(), label.y(), placed.leaderX(), placed.leaderY());
    }
}
