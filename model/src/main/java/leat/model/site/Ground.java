package leat.model.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.quantity.Length;

/**
 * The height of the ground as it is and as it will be. Between spot levels it is the height of the plane that
 * fits them best, the near ones above all (McLain 1974, see docs/theory/ground.md); exact at a spot level, flat where
 * there are none. The order in which levels are given does not matter.
 *
 * @param asItIs   may be empty: flat at the datum; kept from west to east, no place twice
 * @param finished only where grading changes the ground: at these places they stand for those as it is, elsewhere the
 *     levels as it is go on counting; kept from west to east, no place twice
 */
public record Ground(List<SpotLevel> asItIs, List<SpotLevel> finished) {

    public static final Ground FLAT = new Ground(List.of(), List.of());

    private static final Comparator<SpotLevel> WEST_TO_EAST = Comparator.<SpotLevel>comparingDouble(
                    spot -> spot.at().xM())
            .thenComparingDouble(spot -> spot.at().yM());

    public Ground {
        asItIs = sorted("asItIs", asItIs);
        finished = sorted("finished", finished);
    }

    public Length levelAsItIs(Point point) {
        return new Length(LocalPlane.levelM(asItIs, point));
    }

    /** Height of the finished grade, from which every cover counts. */
    public Length levelFinished(Point point) {
        return new Length(LocalPlane.levelM(merged(asItIs, finished), point));
    }

    private static List<SpotLevel> sorted(String field, List<SpotLevel> levels) {
        List<SpotLevel> sorted = new ArrayList<>(Require.entries("ground", field, levels));
        sorted.sort(WEST_TO_EAST);
        for (int i = 1; i < sorted.size(); i++) {
            Point at = sorted.get(i).at();
            if (at.equals(sorted.get(i - 1).at())) {
                throw new InvalidValueException(
                        "ground", field, "given twice at " + at.east() + ", " + at.north(), "one level for a place");
            }
        }
        return List.copyOf(sorted);
    }

    /** The levels with those of {@code instead} in place of the ones at the same places; both run from west to east. */
    private static List<SpotLevel> merged(List<SpotLevel> levels, List<SpotLevel> instead) {
        if (instead.isEmpty()) {
            return levels;
        }
        List<SpotLevel> merged = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < levels.size() || j < instead.size()) {
            int order = i == levels.size()
                    ? 1
                    : j == instead.size() ? -1 : WEST_TO_EAST.compare(levels.get(i), instead.get(j));
            merged.add(order < 0 ? levels.get(i) : instead.get(j));
            i += order <= 0 ? 1 : 0;
            j += order >= 0 ? 1 : 0;
        }
        return merged;
    }
}
