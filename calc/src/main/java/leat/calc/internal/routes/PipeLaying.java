package leat.calc.internal.routes;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.model.catalog.Rules;
import leat.model.geometry.Point;
import leat.model.id.LaidId;
import leat.model.id.PipeId;
import leat.model.quantity.Length;
import leat.model.site.Phase;
import leat.model.water.WaterSystem;

/** Pipes lie as deep as the rules ask; what is no pipe is left out. */
public final class PipeLaying implements TrenchLaying {

    private final Rules rules;
    private final Length below;
    private final SortedSet<PipeId> main = new TreeSet<>();
    private final SortedSet<PipeId> now = new TreeSet<>();

    /** @param below added to the cover for the pipe itself and what it lies on */
    public PipeLaying(Rules rules, WaterSystem water, Length below) {
        this.rules = rules;
        this.below = below;
        water.main().runs().forEach(run -> main.add(run.id()));
        water.pipes().filter(run -> run.phase() == Phase.NOW).forEach(run -> now.add(run.id()));
    }

    /** Deep enough for the pipe that wants most cover. */
    @Override
    public Length depth(SortedSet<LaidId> contents, List<Point> route) {
        double coverM = 0;
        for (LaidId laid : contents) {
            if (laid instanceof PipeId pipe) {
                String rule = main.contains(pipe) ? "trench.cover.main" : "trench.cover.lateral";
                coverM = Math.max(coverM, rules.get(rule).limit().si());
            }
        }
        return new Length(coverM).plus(below);
    }

    @Override
    public Phase phase(SortedSet<LaidId> contents) {
        return contents.stream().anyMatch(now::contains) ? Phase.NOW : Phase.LATER;
    }
}
