package leat.calc.workplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.calc.workplan.StepGraph.Deed;
import leat.model.id.HeadId;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.id.SourceId;
import leat.model.site.Phase;
import leat.model.water.BackflowPreventer;
import leat.model.water.Lateral;
import leat.model.water.Manifold;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;

/** Deeds on pipes, valves and heads. The main is tested while it is open; laterals are flushed before heads are set. */
final class WaterDeeds {

    private final StepGraph graph;
    private final PhaseWorks works;
    private final GroundDeeds ground;
    private final WaterSystem water;
    private Optional<Deed> test = Optional.empty();

    WaterDeeds(StepGraph graph, PhaseWorks works, GroundDeeds ground) {
        this.graph = graph;
        this.works = works;
        this.ground = ground;
        this.water = works.yard.water();
    }

    void add() {
        addMain();
        for (Manifold manifold : water.manifolds()) {
            addValves(manifold);
        }
        water.backflows().forEach(this::addBackflow);
        water.laterals().forEach(this::addLateral);
        addHeadsAndZones();
    }

    private void addMain() {
        List<PipeRun> pipes = works.mainPipes();
        if (pipes.isEmpty()) {
            return;
        }
        List<Id> all = new ArrayList<>(pipes.stream().map(PipeRun::id).toList());
        Deed tested = graph.add(WorkKind.TEST_MAIN, "", all);
        test = Optional.of(tested);
        for (PipeRun run : pipes) {
            Deed lay = graph.add(WorkKind.LAY_MAIN, "", run.id());
            graph.order(lay, tested);
            ground.laid(run.id(), lay);
            ground.proved(run.id(), tested);
            boolean fromOutside = run.from() instanceof SourceId
                    || (run.from() instanceof PipeId from
                            && water.pipe(from)
                                    .filter(one -> one.existing() || one.phase().compareTo(works.phase) < 0)
                                    .isPresent());
            if (fromOutside) {
                Deed tie = graph.add(WorkKind.TIE_IN, "", run.id());
                graph.order(lay, tie);
                graph.order(tie, tested);
            }
        }
    }

    /** A manifold comes with the pipe that it stands on. */
    private void addValves(Manifold manifold) {
        Optional<PipeRun> feed = manifold.on().flatMap(water::pipe);
        boolean here = feed.map(run -> run.existing() ? works.phase == Phase.NOW : works.isBuilt(run))
                .orElse(false);
        if (!here) {
            return;
        }
        List<Id> things = new ArrayList<>(List.of(manifold.id()));
        manifold.valves().forEach(valve -> things.add(valve.id()));
        Deed build = graph.add(WorkKind.VALVES, manifold.id().name(), things);
        feed.flatMap(run -> ground.laying(run.id())).ifPresent(lay -> graph.order(lay, build));
        test.ifPresent(tested -> graph.order(build, tested));
    }

    private void addBackflow(BackflowPreventer backflow) {
        Optional<PipeRun> run = water.pipe(backflow.on());
        if (run.filter(works::isBuilt).isEmpty()) {
            return;
        }
        graph.add(WorkKind.PERMIT, "", backflow.id());
        Deed set = graph.add(WorkKind.BACKFLOW, "", backflow.id());
        Deed tried = graph.add(WorkKind.TEST_BACKFLOW, "", backflow.id());
        ground.laying(backflow.on()).ifPresent(lay -> graph.order(lay, set));
        graph.order(set, tried);
        test.ifPresent(tested -> {
            graph.order(set, tested);
            graph.order(tested, tried);
        });
    }

    private void addLateral(Lateral lateral) {
        List<PipeRun> runs = lateral.runs().stream().filter(works::isBuilt).toList();
        if (runs.isEmpty()) {
            return;
        }
        String part = lateral.zone().name();
        List<Id> pipes = new ArrayList<>(runs.stream().map(PipeRun::id).toList());
        Deed flush = graph.add(WorkKind.FLUSH, part, pipes);
        test.ifPresent(tested -> graph.order(tested, flush));
        graph.of(WorkKind.VALVES).forEach(build -> graph.order(build, flush));
        for (PipeRun run : runs) {
            Deed lay = graph.add(WorkKind.LAY_LATERAL, part, run.id());
            graph.order(lay, flush);
            ground.laid(run.id(), lay);
            ground.proved(run.id(), flush);
        }
    }

    private void addHeadsAndZones() {
        for (Zone zone : water.zones()) {
            if (zone.phase() != works.phase || zone.heads().isEmpty()) {
                continue;
            }
            String part = zone.id().name();
            Deed heads = graph.add(WorkKind.HEADS, part, List.<HeadId>copyOf(zone.heads()));
            Deed tune = graph.add(WorkKind.TUNE, part, zone.id());
            graph.order(heads, tune);
            graph.of(WorkKind.FLUSH).stream()
                    .filter(flush -> flush.part().equals(part))
                    .forEach(flush -> graph.order(flush, heads));
            water.lateral(zone.id())
                    .ifPresent(lateral -> lateral.runs().forEach(run -> ground.whenFilled(run.id(), heads)));
            graph.of(WorkKind.TEST_BACKFLOW).forEach(tried -> graph.order(tried, tune));
            graph.order(tune, graph.add(WorkKind.LABEL, "", zone.valve()));
        }
    }
}
