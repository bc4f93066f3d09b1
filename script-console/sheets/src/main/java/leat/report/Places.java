package leat.report;

import java.util.Optional;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.id.BackflowId;
import leat.model.id.BibId;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.HeadId;
import leat.model.id.Id;
import leat.model.id.LoadId;
import leat.model.id.ManifoldId;
import leat.model.id.PanelId;
import leat.model.id.PipeId;
import leat.model.id.SegmentId;
import leat.model.id.SourceId;
import leat.model.id.SurfaceId;
import leat.model.id.SwitchId;
import leat.model.id.ValveId;
import leat.model.id.ZoneId;
import leat.model.plan.Yard;
import leat.model.power.LightSwitch;
import leat.model.power.Load;
import leat.model.power.Panel;
import leat.model.power.PowerSystem;
import leat.model.water.HoseBib;
import leat.model.water.Manifold;
import leat.model.water.Source;
import leat.model.water.WaterSystem;

/** Where on the plan one points to for a thing. */
final class Places {

    private final Yard yard;
    private final WaterSystem water;

    Places(Yard yard) {
        this.yard = yard;
        this.water = yard.water();
    }

    /** Empty for things without a place of their own on this plan. */
    Optional<Point> of(Id id) {
        if (id instanceof HeadId head) {
            return water.head(head).map(one -> one.at());
        }
        if (id instanceof PipeId pipe) {
            return water.pipe(pipe).map(run -> middle(run.route()));
        }
        if (id instanceof SourceId source) {
            return water.source(source).map(Source::at);
        }
        if (id instanceof ValveId valve) {
            return water.manifoldOf(valve).map(Manifold::at);
        }
        if (id instanceof ZoneId zone) {
            return water.zone(zone).flatMap(one -> of(one.valve()));
        }
        if (id instanceof SurfaceId surface) {
            return yard.terrain().surface(surface).map(one -> Interior.of(one.region()));
        }
        Optional<Point> device = ofDevice(id);
        return device.isPresent() ? device : ofPower(id);
    }

    private Optional<Point> ofPower(Id id) {
        PowerSystem power = yard.power();
        if (id instanceof PanelId panel) {
            return power.panel(panel).map(Panel::at);
        }
        if (id instanceof CircuitId circuit) {
            return power.circuit(circuit).flatMap(one -> of(one.supply()));
        }
        if (id instanceof LoadId load) {
            return power.load(load).map(Load::at);
        }
        if (id instanceof SwitchId one) {
            return power.lightSwitch(one).map(LightSwitch::at);
        }
        if (id instanceof ConduitId conduit) {
            return power.conduit(conduit).map(one -> middle(one.route()));
        }
        if (id instanceof CableId cable) {
            return power.cable(cable).map(one -> middle(one.route()));
        }
        return Optional.empty();
    }

    private Optional<Point> ofDevice(Id id) {
        if (id instanceof ManifoldId) {
            return water.manifolds().stream()
                    .filter(one -> one.id().equals(id))
                    .map(Manifold::at)
                    .findFirst();
        }
        if (id instanceof BibId) {
            return water.bibs().stream()
                    .filter(one -> one.id().equals(id))
                    .map(HoseBib::at)
                    .findFirst();
        }
        if (id instanceof BackflowId) {
            return water.backflows().stream()
                    .filter(one -> one.id().equals(id))
                    .flatMap(one -> water.pipe(one.on()).stream())
                    .map(run -> run.route().start())
                    .findFirst();
        }
        if (id instanceof SegmentId) {
            return yard.trenches().stream()
                    .filter(one -> one.id().equals(id))
                    .map(one -> middle(one.route()))
                    .findFirst();
        }
        return Optional.empty();
    }

    private static Point middle(Polyline route) {
        return route.at(route.length().times(0.5));
    }
}
