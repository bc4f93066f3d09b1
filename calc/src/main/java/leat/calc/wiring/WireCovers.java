package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.calc.internal.routes.DigSite;
import leat.calc.internal.routes.Tolls;
import leat.model.catalog.ConduitSpec;
import leat.model.finding.Rule;
import leat.model.geometry.Point;
import leat.model.id.CableId;
import leat.model.id.ConduitId;
import leat.model.id.LaidId;
import leat.model.plan.Site;
import leat.model.power.Cable;
import leat.model.power.Conduit;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.quantity.Current;
import leat.model.quantity.Length;
import leat.model.quantity.Voltage;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;

/** How deep conduits and bare cables must lie: by what is in them, and by the surfaces that they pass under. */
final class WireCovers {

    /** A conduit or cable whose size is not known counts as so thick; common practice, no source. */
    private static final Length UNSIZED = Length.millimetres(25);

    /** What a spare conduit will hold nobody knows: it lies as deep as one for any circuit. */
    private static final Voltage ANY_VOLTAGE = new Voltage(400);

    private static final Current ANY_BREAKER = new Current(100);

    /** Shorter pieces under a surface are rounding. */
    private static final double LEAST_M = 0.01;

    private final ElectricalCode code;
    private final Site site;
    private final PowerSystem power;
    private final List<Ground> grounds = new ArrayList<>();

    /** A surface under which wires may lie: a metre inside costs two, one outside costs one. */
    private record Ground(SurfaceKind kind, Tolls tolls) {}

    /** @param power with the sizes that are known */
    WireCovers(Site site, PowerSystem power) {
        this.code = ElectricalCode.of(site);
        this.site = site;
        this.power = power;
        for (Surface surface : site.yard().terrain().surfaces()) {
            if (!DigSite.cannotBeDug(surface.kind())) {
                var tolls = new Tolls();
                tolls.add(DigSite.patch(surface.region()), 2);
                grounds.add(new Ground(surface.kind(), tolls));
            }
        }
    }

    /** The rule that asks for most along a route; empty for pipes. */
    Optional<Rule> rule(LaidId laid, List<Point> route) {
        Rule most = null;
        SortedSet<SurfaceKind> surfaces = surfaces(route);
        for (Burial burial : burials(laid)) {
            for (SurfaceKind surface : surfaces) {
                Rule rule = code.cover(surface, burial);
                most = most == null || rule.limit().si() > most.limit().si() ? rule : most;
            }
        }
        return Optional.ofNullable(most);
    }

    private List<Burial> burials(LaidId laid) {
        List<Burial> burials = new ArrayList<>();
        if (laid instanceof ConduitId id) {
            Optional<ConduitSpec> spec = power.conduit(id).map(this::spec);
            List<Cable> inside = power.cablesIn(id);
            inside.forEach(cable -> burials.add(burial(cable, spec)));
            if (inside.isEmpty()) {
                spec.ifPresent(one -> burials.add(new Burial(one.buriedAs(), ANY_VOLTAGE, ANY_BREAKER, false)));
            }
        } else if (laid instanceof CableId id) {
            power.cable(id).ifPresent(cable -> burials.add(burial(cable, Optional.empty())));
        }
        return burials;
    }

    private Burial burial(Cable cable, Optional<ConduitSpec> conduit) {
        if (cable instanceof PowerCable one) {
            return power.circuit(one.circuit())
                    .map(circuit -> Burial.of(circuit, conduit))
                    .orElseThrow(() -> new AssertionError(one));
        }
        return Burial.ofControl(conduit);
    }

    /** The least size stands for one that is not known: all sizes of a series are of one kind. */
    private ConduitSpec spec(Conduit conduit) {
        return conduit.size()
                .map(size -> site.catalog().electrical().conduit(conduit.series(), size))
                .orElseGet(() ->
                        site.catalog().electrical().conduits(conduit.series()).get(0));
    }

    private SortedSet<SurfaceKind> surfaces(List<Point> route) {
        SortedSet<SurfaceKind> kinds = new TreeSet<>(List.of(SurfaceKind.LAWN));
        for (Ground ground : grounds) {
            if (insideM(ground.tolls(), route) > LEAST_M) {
                kinds.add(ground.kind());
            }
        }
        return kinds;
    }

    /** What costs more than the length lies inside. */
    private static double insideM(Tolls tolls, List<Point> route) {
        double sumM = 0;
        for (int i = 1; i < route.size(); i++) {
            Point a = route.get(i - 1);
            Point b = route.get(i);
            sumM += tolls.costM(a.xM(), a.yM(), b.xM(), b.yM()) - a.distanceM(b);
        }
        return sumM;
    }

    /** Outside diameter, or what stands for it. */
    Length outside(LaidId laid) {
        if (laid instanceof ConduitId id) {
            return power.conduit(id)
                    .filter(one -> one.size().isPresent())
                    .flatMap(one -> spec(one).outside())
                    .orElse(UNSIZED);
        }
        return laid instanceof CableId ? UNSIZED : Length.ZERO;
    }

    /** From finished grade to the bottom of its trench: the cover, its own thickness and what it lies on. */
    Length depth(LaidId laid, List<Point> route, Length below) {
        Length thickness = outside(laid);
        Length added = thickness.compareTo(below) > 0 ? thickness : below;
        return rule(laid, route)
                .map(rule -> new Length(rule.limit().si()).plus(added))
                .orElse(Length.ZERO);
    }
}
