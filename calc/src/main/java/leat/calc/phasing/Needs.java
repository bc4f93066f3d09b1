package leat.calc.phasing;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.id.SurfaceId;
import leat.model.id.ValveId;
import leat.model.id.WireEndId;
import leat.model.plan.Yard;
import leat.model.power.Cable;
import leat.model.power.Circuit;
import leat.model.power.Controller;
import leat.model.power.Load;
import leat.model.power.Luminaire;
import leat.model.power.Panel;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.power.StructureFeed;
import leat.model.power.Transformer;
import leat.model.power.ValveCable;
import leat.model.site.Phase;
import leat.model.water.Lateral;
import leat.model.water.Manifold;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;

/** For each thing of now what it needs at once: its feed, its circuit, the structure it hangs in. Only needs of later count. */
final class Needs {

    private final Yard yard;
    private final LaterThings later;
    private final SortedMap<Id, SortedSet<Id>> unmet = new TreeMap<>();

    private Needs(Yard yard, LaterThings later) {
        this.yard = yard;
        this.later = later;
    }

    /** Things of now, each with the things of later that it needs. */
    static SortedMap<Id, SortedSet<Id>> unmet(Yard yard, LaterThings later) {
        var needs = new Needs(yard, later);
        needs.addWater(yard.water());
        needs.addPower(yard.power());
        yard.trenches().forEach(trench -> trench.contents().forEach(laid -> needs.add(laid, trench.id())));
        return Collections.unmodifiableSortedMap(needs.unmet);
    }

    private void add(Id thing, Id needed) {
        if (!later.has(thing) && later.has(needed) && !later.isThere(thing)) {
            unmet.computeIfAbsent(thing, key -> new TreeSet<>()).add(needed);
        }
    }

    private void addWater(WaterSystem water) {
        water.pipes().forEach(run -> add(run.id(), run.from()));
        water.bibs().forEach(bib -> bib.on().ifPresent(on -> add(bib.id(), on)));
        for (Manifold manifold : water.manifolds()) {
            manifold.on().ifPresent(on -> add(manifold.id(), on));
        }
        for (Lateral lateral : water.laterals()) {
            lateral.heads().forEach(this::add);
        }
        for (Zone zone : water.zones()) {
            zone.heads().forEach(head -> add(head, zone.id()));
            if (zone.phase() == Phase.NOW) {
                addValveWires(zone.id(), zone.valve());
            }
        }
    }

    /** A zone runs when a cable and a controller work its valve; without any the plan is unfinished, which is said elsewhere. */
    private void addValveWires(Id zone, ValveId valve) {
        yard.water().manifolds().stream()
                .filter(one -> one.valves().stream().anyMatch(of -> of.id().equals(valve)))
                .findFirst()
                .ifPresent(manifold -> {
                    var cables = yard.power().valveCables().stream()
                            .filter(cable -> cable.to().equals(manifold.id()))
                            .toList();
                    boolean works = cables.stream().anyMatch(one -> !later.has(one.id()) && !later.has(one.from()));
                    if (!works) {
                        cables.forEach(one -> {
                            add(zone, one.id());
                            add(zone, one.from());
                        });
                    }
                });
    }

    private void addPower(PowerSystem power) {
        for (Circuit circuit : power.circuits()) {
            add(circuit.id(), circuit.supply());
        }
        for (Panel panel : power.panels()) {
            addStructure(panel.id(), panel.at(), panel.inside());
        }
        power.switches().forEach(one -> addStructure(one.id(), one.at(), Optional.empty()));
        power.loads().forEach(load -> addLoad(power, load));
        power.cables().forEach(cable -> addCable(power, cable));
    }

    private void addStructure(Id thing, Point at, Optional<SurfaceId> inside) {
        inside.ifPresent(one -> add(thing, one));
        later.structureAt(at).ifPresent(one -> add(thing, one));
    }

    private void addLoad(PowerSystem power, Load load) {
        load.circuit().ifPresent(one -> add(load.id(), one));
        addStructure(load.id(), load.at(), inside(load));
        if (load instanceof StructureFeed feed) {
            add(load.id(), feed.structure());
        }
        if (load instanceof Luminaire light) {
            light.lightSwitch().ifPresent(one -> add(load.id(), one));
            light.lamp().ifPresent(one -> add(load.id(), one.transformer()));
        }
        if (load instanceof Transformer transformer) {
            transformer.plug().ifPresent(one -> add(load.id(), one));
        }
        addCablesTo(power, load.id(), load.id(), new TreeSet<>());
    }

    private static Optional<SurfaceId> inside(Load load) {
        if (load instanceof Controller controller) {
            return controller.inside();
        }
        return load instanceof Transformer transformer ? transformer.inside() : Optional.empty();
    }

    /** All cables on the way from the panel, and what they pass. */
    private void addCablesTo(PowerSystem power, Id load, WireEndId end, SortedSet<Id> seen) {
        if (!seen.add(end)) {
            return;
        }
        for (PowerCable cable : power.powerCables()) {
            if (cable.to().equals(end)) {
                add(load, cable.id());
                add(load, cable.from());
                addCablesTo(power, load, cable.from(), seen);
            }
        }
    }

    private void addCable(PowerSystem power, Cable cable) {
        cable.conduits().forEach(one -> add(cable.id(), one));
        if (cable instanceof ValveCable valves) {
            add(cable.id(), valves.from());
        } else if (cable instanceof PowerCable one) {
            // wires may be laid ahead of what they come from, as long as they lead to later things only
            power.circuit(one.circuit()).ifPresent(circuit -> addIfFeeding(one, circuit));
        }
    }

    private void addIfFeeding(PowerCable cable, Circuit circuit) {
        if (!later.has(cable.to())) {
            add(cable.id(), circuit.id());
        }
    }
}
