package leat.model.site;

import java.util.List;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.quantity.Length;

/**
 * The height of the ground as it is and as it will be. Between spot levels it is the mean of all of them weighted by
 * one over the squared distance (Shepard 1968); exact at a spot level, flat where there are none.
 *
 * @param asItIs   may be empty: flat at the datum
 * @param finished only where grading changes the ground; empty means that it stays as it is
 */
public record Ground(List<SpotLevel> asItIs, List<SpotLevel> finished) {

    public static final Ground FLAT = new Ground(List.of(), List.of());

    public Ground {
        Require.present("ground", "asItIs", asItIs);
        Require.present("ground", "finished", finished);
        asItIs = List.copyOf(asItIs);
        finished = List.copyOf(finished);
    }

    public Length levelAsItIs(Point point) {
        return new Length(levelM(asItIs, point));
    }

    /** Height of the finished grade, from which every cover counts. */
    public Length levelFinished(Point point) {
        return new Length(levelM(finished.isEmpty() ? asItIs : finished, point));
    }

    private static double levelM(List<SpotLevel> levels, Point point) {
        double weights = 0;
        double sumM = 0;
        for (SpotLevel spot : levels) {
            double dx = point.xM() - spot.at().xM();
            double dy = point.yM() - spot.at().yM();
            double squared = dx * dx + dy * dy;
            if (squared == 0) {
                return spot.level().metres();
            }
            weights += 1 / squared;
            sumM += spot.level().metres() / squared;
        }
        return weights == 0 ? 0 : sumM / weights;
    }
}
