package leat.calc.wiring;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.id.WireEndId;
import leat.model.power.Ahead;
import leat.model.power.Load;
import leat.model.power.PowerSystem;
import leat.model.site.Phase;

/**
 * When wires and conduits are laid: now if anything behind them is there now, or wants them laid now. What stands behind
 * a wire counts with it.
 */
final class PhaseChoice {

    private final SortedMap<WireEndId, Ahead> wanted = new TreeMap<>();

    PhaseChoice(PowerSystem power) {
        power.loads().forEach(load -> wanted.put(load.id(), ahead(load)));
        power.switches().stream()
                .filter(one -> one.phase() == Phase.NOW)
                .forEach(one -> wanted.put(one.id(), Ahead.WIRES));
    }

    /** What is laid now for a load; for one of now, all of it. */
    private static Ahead ahead(Load load) {
        return load.phase() == Phase.NOW ? Ahead.WIRES : load.ahead();
    }

    /** @param wires of one circuit, what feeds before what is fed */
    SortedMap<Wire, Ahead> laidNow(List<Wire> wires) {
        SortedMap<WireEndId, Ahead> most = new TreeMap<>(wanted);
        SortedMap<Wire, Ahead> laid = new TreeMap<>((a, b) -> a.to().compareTo(b.to()));
        for (int i = wires.size() - 1; i >= 0; i--) {
            Wire wire = wires.get(i);
            Ahead here = most.getOrDefault(wire.to(), Ahead.NOTHING);
            laid.put(wire, here);
            Ahead before = most.getOrDefault(wire.from(), Ahead.NOTHING);
            most.put(wire.from(), here.compareTo(before) > 0 ? here : before);
        }
        return laid;
    }

    static Phase ofWire(Ahead laid) {
        return laid == Ahead.WIRES ? Phase.NOW : Phase.LATER;
    }

    static Phase ofConduit(Ahead laid) {
        return laid == Ahead.NOTHING ? Phase.LATER : Phase.NOW;
    }
}
