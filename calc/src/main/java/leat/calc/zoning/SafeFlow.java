package leat.calc.zoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.model.catalog.Device;
import leat.model.finding.Reason;
import leat.model.finding.Subject;
import leat.model.id.PipeId;
import leat.model.plan.Aspect;
import leat.model.plan.Site;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
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

    /** @param wanted pressure at the heads at which their flows were taken */
    static SafeFlow at(Manifold manifold, Site site, ZoningParameters parameters, Pressure wanted) {
        if (parameters.mostFlow().isPresent()) {
            return new SafeFlow(parameters.mostFlow(), List.of());
        }
        WaterSystem water = site.yard().water();
        List<PipeRun> path = manifold.on().map(water::pathTo).orElse(List.of());
        Optional<Source> source = sourceOf(manifold, water);
        List<Flow> limits = new ArrayList<>();
        List<Reason> reasons = new ArrayList<>();
        if (source.isPresent()) {
            addSource(source.get(), site, parameters, wanted, limits, reasons);
        } else {
            reasons.add(new Reason(
                    Subject.of(manifold.id()),
                    "no source feeds it, so what the source gives was taken to be no limit"));
        }
        addDevices(manifold, path, site, parameters, limits);
        addVelocity(path, site, limits);
        return new SafeFlow(limits.stream().min(Flow::compareTo), reasons);
    }

    /** What feeds the manifold, or while nothing does the only source or the nearest one. */
    private static Optional<Source> sourceOf(Manifold manifold, WaterSystem water) {
        Optional<Source> feeding = manifold.on().flatMap(water::sourceOf);
        return feeding.or(() -> water.sources().stream()
                .min((a, b) -> a.at().distance(manifold.at()).compareTo(b.at().distance(manifold.at()))));
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

    private static void addDevices(
            Manifold manifold, List<PipeRun> path, Site site, ZoningParameters parameters, List<Flow> limits) {
        List<PipeId> ids = path.stream().map(PipeRun::id).toList();
        List<String> keys = new ArrayList<>();
        path.forEach(run -> keys.addAll(run.fitted()));
        site.yard().water().backflows().stream()
                .filter(one -> ids.contains(one.on()))
                .forEach(one -> keys.add(one.device()));
        manifold.valves().stream()
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

    private static void addVelocity(List<PipeRun> path, Site site, List<Flow> limits) {
        double mostMPerS = site.rules().get("hydraulics.velocity").limit().si();
        for (PipeRun run : path) {
            run.tradeSize().ifPresent(size -> {
                Length bore = site.catalog().pipe(size).bore();
                double areaM2 = Math.PI * bore.metres() * bore.metres() / 4;
                limits.add(Flow.cubicMetresPerSecond(areaM2 * mostMPerS));
            });
        }
    }
}
