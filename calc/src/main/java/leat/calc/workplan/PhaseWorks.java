package leat.calc.workplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.calc.digging.LaidDepth;
import leat.calc.digging.LaidKind;
import leat.calc.digging.TrenchDig;
import leat.calc.internal.lines.Nearness;
import leat.calc.phasing.EarlyEnd;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.id.LaidId;
import leat.model.id.PipeId;
import leat.model.id.SegmentId;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.site.ExistingService;
import leat.model.site.Phase;
import leat.model.trench.TrenchSegment;
import leat.model.water.PipeRun;

/** What is built in one phase, looked up for those who make deeds of it. */
final class PhaseWorks {

    final Site site;
    final Yard yard;
    final Phase phase;
    private final WorkPlanParameters parameters;
    private final SortedMap<LaidId, List<TrenchDig>> trenchesOf = new TreeMap<>();
    private final SortedSet<PipeId> main = new TreeSet<>();

    PhaseWorks(Site site, WorkPlanParameters parameters, Phase phase) {
        this.site = site;
        this.yard = site.yard();
        this.phase = phase;
        this.parameters = parameters;
        yard.water().main().runs().forEach(run -> main.add(run.id()));
        for (TrenchDig dig : parameters.digging().trenches().values()) {
            for (LaidDepth laid : dig.laid()) {
                trenchesOf.computeIfAbsent(laid.id(), key -> new ArrayList<>()).add(dig);
            }
        }
    }

    /** Those that are dug in this phase. */
    List<TrenchDig> trenches() {
        return parameters.digging().trenches().values().stream()
                .filter(dig -> dig.phase() == phase)
                .toList();
    }

    /** In which the thing lies, if they are dug in this phase. */
    List<TrenchDig> trenchesOf(LaidId thing) {
        return trenchesOf.getOrDefault(thing, List.of()).stream()
                .filter(dig -> dig.phase() == phase)
                .toList();
    }

    /** New pipes of the main, upstream first. */
    List<PipeRun> mainPipes() {
        return yard.water().main().runs().stream().filter(this::isBuilt).toList();
    }

    boolean isBuilt(PipeRun run) {
        return !run.existing() && run.phase() == phase;
    }

    boolean isMain(Id id) {
        return id instanceof PipeId pipe && main.contains(pipe);
    }

    /** What of the trench is laid in this phase, by layer from the bottom. */
    List<LaidDepth> laid(TrenchDig dig) {
        return dig.laid().stream().filter(one -> one.phase() == phase).toList();
    }

    boolean holds(TrenchDig dig, LaidKind kind) {
        return dig.laid().stream().anyMatch(one -> one.kind() == kind);
    }

    /** Ends that are made in this phase: what is laid ahead is laid now. */
    List<EarlyEnd> ends() {
        return phase == Phase.NOW ? parameters.phasing().ends() : List.of();
    }

    /** Lines in the ground that the trench comes so near to that it is dug by hand there. */
    List<ExistingService> near(SegmentId id) {
        Optional<TrenchSegment> trench =
                yard.trenches().stream().filter(one -> one.id().equals(id)).findFirst();
        double nearM = site.rules().get("trench.service").limit().si();
        return yard.terrain().services().stream()
                .filter(service -> trench.filter(one ->
                                leastM(one.route().points(), service.route().points())
                                        <= nearM + service.doubt().metres())
                        .isPresent())
                .toList();
    }

    private static double leastM(List<Point> one, List<Point> other) {
        return Nearness.leastDistanceM(east(one), north(one), east(other), north(other));
    }

    private static double[] east(List<Point> points) {
        return points.stream().mapToDouble(Point::xM).toArray();
    }

    private static double[] north(List<Point> points) {
        return points.stream().mapToDouble(Point::yM).toArray();
    }
}
