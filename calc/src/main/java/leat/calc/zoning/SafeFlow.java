package leat.calc.zoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Predicate;
import leat.calc.GivenPipes;
import leat.model.catalog.Device;
import leat.model.finding.Reason;
import leat.model.finding.Subject;
import leat.model.id.PipeId;
import leat.model.id.UpstreamId;
import leat.model.plan.Aspect;
import leat.model.plan.Site;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;
import leat.model.water.Manifold;
import leat.model.water.PipeRun;
import leat.model.water.Source;
import leat.model.water.WaterSystem;

/**
 * The flow that a zone may take at a manifold: the least of what the source gives at the pressure that the heads want,
 * what meter, backflow preventer and valves bear, and what runs slowly enough through the pipes of the main.
 *
 * @param flow    empty if nothing limits it
 * @param reasons what is not known and was taken to be no limit
 */
record SafeFlow(Optional<Flow> flow, List<Reason> reasons) {

    /** No yard takes more; a source that gives this much at the wanted pressure is taken to set no limit. */
    static final Flow ENDLESS = Flow.cubicMetresPerSecond(1);

    private static final int HALVINGS = 60;

    /**
     * What given things allow. Pipes and sizes that are planned set no limit: the main to come is sized for the zones.
     *
     * @param wanted pressure at the heads at which their flows were taken
     */
    static SafeFlow toCome(Manifold manifold, Site site, ZoningParameters parameters, Pressure wanted) {
        WaterSystem water = site.yard().water();
        SortedSet<PipeId> given = GivenPipes.of(site.yard());
        Optional<UpstreamId> begins = manifold.on()
                .filter(given::contains)
                .<UpstreamId>map(pipe -> pipe)
                .or(() -> Optional.ofNullable(parameters.mains().get(manifold.id())))
                .or(manifold::on);
        List<PipeRun> path =
                begins
                        .filter(PipeId.class::isInstance)
                        .map(pipe -> water.pathTo((PipeId) pipe))
                        .orElse(List.of())
                        .stream()
                        .filter(run -> given.contains(run.id()))
                        .toList();
        Optional<Source> source = begins.flatMap(one -> source(one, water)).or(() -> nearestSource(manifold, water));
        return of(new Way(manifold, source, path), site, parameters, wanted, run -> isSizeGiven(run, site));
    }

    /** What the main as it is now allows, with all planned sizes. */
    static SafeFlow asItIs(Manifold manifold, Site site, ZoningParameters parameters, Pressure wanted) {
        WaterSystem water = site.yard().water();
        List<PipeRun> path = manifold.on().map(water::pathTo).orElse(List.of());
        Optional<Source> source = manifold.on().flatMap(water::sourceOf).or(() -> nearestSource(manifold, water));
        return of(new Way(manifold, source, path), site, parameters, wanted, run -> true);
    }

    /** From a source to a manifold, as far as it is known. */
    private record Way(Manifold manifold, Optional<Source> source, List<PipeRun> path) {}

    private static SafeFlow of(
            Way way, Site site, ZoningParameters parameters, Pressure wanted, Predicate<PipeRun> isSized) {
        if (parameters.mostFlow().isPresent()) {
            return new SafeFlow(parameters.mostFlow(), List.of());
        }
        List<Flow> limits = new ArrayList<>();
        List<Reason> reasons = new ArrayList<>();
        if (way.source().isPresent()) {
            addSource(way.source().get(), site, parameters, wanted, limits, reasons);
        } else {
            reasons.add(new Reason(
                    Subject.of(way.manifold().id()),
                    "no source feeds it, so what the source gives was taken to be no limit"));
        }
        addDevices(way, site, parameters, limits);
        way.path().forEach(run -> limits.add(velocityLimit(run, site, isSized.test(run))));
        return new SafeFlow(limits.stream().min(Flow::compareTo), reasons);
    }

    private static Optional<Source> source(UpstreamId id, WaterSystem water) {
        return id instanceof PipeId pipe
                ? water.sourceOf(pipe)
                : water.sources().stream().filter(one -> one.id().equals(id)).findFirst();
    }

    private static Optional<Source> nearestSource(Manifold manifold, WaterSystem water) {
        return water.sources().stream()
                .min((a, b) -> a.at().distance(manifold.at()).compareTo(b.at().distance(manifold.at())));
    }

    private static boolean isSizeGiven(PipeRun run, Site site) {
        return run.existing() || !site.yard().isPlanned(run.id(), Aspect.SIZE);
    }

    private static void addSource(
            Source source,
            Site site,
            ZoningParameters parameters,
            Pressure wanted,
            List<Flow> limits,
            List<Reason> reasons) {
        Pressure residual = (Pressure) site.rules().get("source.residual").limit();
        Pressure needed = wanted.times(1 + parameters.lossReserve().value());
        Pressure floor = needed.compareTo(residual) > 0 ? needed : residual;
        if (source.staticPressure().compareTo(floor) <= 0) {
            reasons.add(new Reason(
                    Subject.of(source.id()),
                    "its pressure does not reach the heads' reference pressure with the reserve for losses; zones were cut"
                            + " to the pressure that must stay in the supply"));
            floor = residual;
        }
        Flow given = greatestAt(source, floor);
        if (given.compareTo(ENDLESS) < 0) {
            limits.add(given.times(parameters.safety().value()));
        } else {
            reasons.add(new Reason(
                    Subject.of(source.id()),
                    "no flow test says how its pressure falls, so what it gives was taken to be no limit"));
        }
        double meterShare = site.rules().get("source.flow").limit().si();
        source.meter()
                .ifPresent(key -> limits.add(site.catalog().device(key).most().times(meterShare)));
    }

    private static Flow greatestAt(Source source, Pressure floor) {
        if (source.pressureAt(ENDLESS).compareTo(floor) >= 0) {
            return ENDLESS;
        }
        double low = 0;
        double high = ENDLESS.si();
        for (int i = 0; i < HALVINGS; i++) {
            double mid = (low + high) / 2;
            boolean holds = source.pressureAt(Flow.cubicMetresPerSecond(mid)).compareTo(floor) >= 0;
            low = holds ? mid : low;
            high = holds ? high : mid;
        }
        return Flow.cubicMetresPerSecond(low);
    }

    private static void addDevices(Way way, Site site, ZoningParameters parameters, List<Flow> limits) {
        List<PipeId> ids = way.path().stream().map(PipeRun::id).toList();
        List<String> keys = new ArrayList<>();
        way.path().forEach(run -> keys.addAll(run.fitted()));
        site.yard().water().backflows().stream()
                .filter(one -> ids.contains(one.on()))
                .forEach(one -> keys.add(one.device()));
        way.manifold().valves().stream()
                .filter(valve -> !valve.spare() && !site.yard().isPlanned(valve.id(), Aspect.ZONE))
                .forEach(valve -> keys.add(valve.device()));
        for (String key : keys) {
            limits.add(
                    bears(site.catalog().device(key)).times(parameters.safety().value()));
        }
    }

    /** What a device bears for hours; where only its most is stated, that. */
    static Flow bears(Device device) {
        return device.continuous().orElse(device.most());
    }

    /** Where the size is still open, the widest of its series may be chosen. */
    private static Flow velocityLimit(PipeRun run, Site site, boolean isSized) {
        double mostMPerS = site.rules().get("hydraulics.velocity").limit().si();
        double boreM = run.tradeSize()
                .filter(size -> isSized)
                .map(size -> site.catalog().pipe(size).bore().metres())
                .orElseGet(() -> widestM(run, site));
        return Flow.cubicMetresPerSecond(Math.PI * boreM * boreM / 4 * mostMPerS);
    }

    private static double widestM(PipeRun run, Site site) {
        return site.catalog().series(run.series()).sizes().stream()
                .mapToDouble(spec -> spec.bore().metres())
                .max()
                .orElseThrow();
    }
}
