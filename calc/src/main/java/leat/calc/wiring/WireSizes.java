package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import leat.model.catalog.ConductorSpec;
import leat.model.catalog.ElectricalTables;
import leat.model.finding.Reason;
import leat.model.finding.Subject;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.plan.Site;
import leat.model.power.Circuit;
import leat.model.power.Conduit;
import leat.model.power.Load;
import leat.model.power.Luminaire;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.power.StructureFeed;
import leat.model.power.ValveCable;
import leat.model.quantity.Quantity;

/**
 * Chooses conductors, the finest that their breaker may protect and that lose little enough voltage, one size for all
 * cables of a circuit; valve wires, with which the valve still opens; then conduits, the smallest that hold it all.
 */
final class WireSizes {

    private final ElectricalCode code;
    private final ElectricalTables tables;
    private final SortedSet<CableId> freeCables;
    private final SortedSet<ConduitId> freeConduits;
    private final List<Reason> reasons = new ArrayList<>();
    private final LampSizes lamps;
    private PowerSystem power;

    /**
     * @param power    with all that is led; sizes of free things in it do not count
     * @param freeTaps circuits behind transformers whose tap is still to be chosen
     */
    WireSizes(
            Site site,
            PowerSystem power,
            SortedSet<CableId> freeCables,
            SortedSet<ConduitId> freeConduits,
            SortedSet<CircuitId> freeTaps,
            CircuitRules rules) {
        this.code = ElectricalCode.of(site);
        this.tables = site.catalog().electrical();
        this.power = power;
        this.freeCables = freeCables;
        this.freeConduits = freeConduits;
        this.lamps = new LampSizes(code, power, freeCables, freeTaps, rules);
    }

    PowerSystem choose() {
        SortedMap<CableId, String> chosen = new TreeMap<>();
        List<Circuit> circuits = new ArrayList<>();
        for (Circuit circuit : power.circuits()) {
            Circuit tapped = circuit;
            List<PowerCable> free = power.cablesOf(circuit.id()).stream()
                    .filter(one -> freeCables.contains(one.id()))
                    .toList();
            if (!free.isEmpty()) {
                ConductorSpec size;
                if (circuit.isLowVoltage()) {
                    LampSizes.Choice choice = lamps.choose(circuit, reasons);
                    tapped = choice.circuit();
                    size = choice.size();
                } else {
                    size = conductor(circuit, free);
                }
                free.forEach(one -> chosen.put(one.id(), size.size()));
            }
            circuits.add(tapped);
        }
        List<PowerCable> powerCables = power.powerCables().stream()
                .map(one -> chosen.containsKey(one.id()) ? one.withConductor(Optional.of(chosen.get(one.id()))) : one)
                .toList();
        List<ValveCable> valveCables = power.valveCables().stream()
                .map(one -> freeCables.contains(one.id()) ? sized(one) : one)
                .toList();
        power = power.with(circuits, power.loads().toList(), power.conduits(), powerCables, valveCables);
        List<Conduit> conduits = power.conduits().stream()
                .map(one -> freeConduits.contains(one.id()) ? sized(one) : one)
                .toList();
        power = power.with(power.circuits(), power.loads().toList(), conduits, powerCables, valveCables);
        return power;
    }

    private ConductorSpec conductor(Circuit circuit, List<PowerCable> free) {
        var contents = new ConduitContents(code, power);
        var tree = new CircuitTree(power, circuit);
        List<ConductorSpec> sizes = code.powerConductors();
        ConductorSpec least = sizes.get(0);
        for (PowerCable cable : free) {
            Optional<ConductorSpec> needed = code.conductorFor(circuit.breaker(), contents.laying(cable, circuit))
                    .map(Answer::value);
            if (needed.isEmpty()) {
                reasons.add(new Reason(
                        Subject.of(cable.id(), "conductor"), "no conductor of the tables may have so great a breaker"));
            }
            ConductorSpec wanted = needed.orElse(sizes.get(sizes.size() - 1));
            least = wanted.metal().area().compareTo(least.metal().area()) > 0 ? wanted : least;
        }
        for (ConductorSpec size : sizes) {
            boolean thickEnough = size.metal().area().compareTo(least.metal().area()) >= 0;
            if (thickEnough && keepsDrop(tree, size)) {
                return size;
            }
        }
        reasons.add(new Reason(
                Subject.of(circuit.id()), "no conductor of the tables loses as little voltage as the rules ask"));
        return least;
    }

    private boolean keepsDrop(CircuitTree tree, ConductorSpec size) {
        Circuit circuit = tree.circuit();
        var drops = new Drops(
                code,
                tree,
                cable -> freeCables.contains(cable.id())
                        ? Optional.of(size)
                        : cable.conductor().map(code::conductor));
        for (Load load : tree.loads()) {
            double mostV = circuit.voltage().si() * limit(load).si();
            if (drops.lost(load.id()).filter(lost -> lost.si() > mostV).isPresent()) {
                return false;
            }
        }
        return true;
    }

    private Quantity limit(Load load) {
        return code.dropLimit(span(load), load instanceof Luminaire).limit();
    }

    static DropSpan span(Load load) {
        return load instanceof StructureFeed ? DropSpan.FEEDER : DropSpan.BRANCH;
    }

    /** The finest wires for control with which the valve still opens while it draws most; the thickest if none will do. */
    private ValveCable sized(ValveCable cable) {
        List<ConductorSpec> made = controlConductors();
        if (made.isEmpty()) {
            return cable;
        }
        ConductorSpec chosen = made.get(made.size() - 1);
        for (int i = made.size() - 1; i >= 0; i--) {
            if (ValveDrop.of(code, tables.valveSupply(), cable, made.get(i))
                            .value()
                            .si()
                    <= code.controlDropLimit().limit().si()) {
                chosen = made.get(i);
            }
        }
        int strands = code.controlCable(chosen, cable.strands())
                .map(one -> one.strands())
                .orElse(cable.strands());
        return new ValveCable(
                cable.id(),
                cable.from(),
                cable.to(),
                cable.route(),
                cable.conduits(),
                Optional.of(chosen.size()),
                strands,
                cable.existing(),
                cable.phase());
    }

    /** Sizes that cables for control are made with, finest first. */
    private List<ConductorSpec> controlConductors() {
        return code.conductors().stream()
                .filter(one -> code.controlCable(one, 1).isPresent())
                .toList();
    }

    private Conduit sized(Conduit conduit) {
        var contents = new ConduitContents(code, power);
        List<ConduitContent> all = contents.of(conduit).orElse(List.of());
        if (all.isEmpty()) {
            return conduit.withSize(Optional.empty());
        }
        Optional<String> size = code.conduitFor(conduit.series(), all).map(one -> one.size());
        if (size.isEmpty()) {
            reasons.add(
                    new Reason(Subject.of(conduit.id(), "size"), "its series has no size that holds all its wires"));
        }
        return conduit.withSize(size);
    }

    List<Reason> reasons() {
        return reasons;
    }
}
