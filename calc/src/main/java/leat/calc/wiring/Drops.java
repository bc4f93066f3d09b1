package leat.calc.wiring;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import leat.calc.wiring.internal.CableTree;
import leat.calc.wiring.internal.LampTree;
import leat.model.catalog.ConductorSpec;
import leat.model.id.CableId;
import leat.model.id.LoadId;
import leat.model.id.WireEndId;
import leat.model.power.Circuit;
import leat.model.power.Load;
import leat.model.power.PowerCable;
import leat.model.quantity.Current;
import leat.model.quantity.Voltage;

/** Current in each cable of a circuit and voltage lost on the way to each thing, when all that it feeds is on. */
final class Drops {

    /** Which conductor a cable has, if it is known. */
    interface Sizes {
        Optional<ConductorSpec> of(PowerCable cable);
    }

    private final CircuitTree tree;
    private final SortedMap<WireEndId, Integer> nodes = new TreeMap<>();
    private final double[] loadA;
    private final double[] currentA;

    /** Not a number from the first cable on whose conductor is not known. */
    private final double[] dropV;

    Drops(ElectricalCode code, CircuitTree tree, Sizes sizes) {
        this(code, tree, sizes, load -> true);
    }

    /** @param isOn the loads that draw current; the others do not, or are not there yet */
    Drops(ElectricalCode code, CircuitTree tree, Sizes sizes, Predicate<Load> isOn) {
        this.tree = tree;
        Circuit circuit = tree.circuit();
        List<WireEndId> order = tree.order();
        int[] parent = new int[order.size()];
        loadA = new double[order.size()];
        double[] loopOhm = new double[order.size()];
        for (int node = 0; node < order.size(); node++) {
            WireEndId end = order.get(node);
            nodes.put(end, node);
            parent[node] = tree.before(end).map(nodes::get).orElse(0);
            loopOhm[node] = tree.feeding(end)
                    .map(cable -> loop(code, circuit, cable, sizes))
                    .orElse(0.0);
        }
        currentA = new double[order.size()];
        dropV = new double[order.size()];
        if (circuit.isLowVoltage()) {
            double[] loadW = loads(isOn, load -> load.power().si());
            LampTree.settle(parent, loopOhm, loadW, circuit.voltage().si(), loadA, currentA, dropV);
        } else {
            double[] all = loads(
                    isOn,
                    load -> code.loadCurrent(load.power(), circuit.voltage(), circuit.liveWires())
                            .value()
                            .si());
            System.arraycopy(all, 0, loadA, 0, all.length);
            CableTree.currents(parent, loadA, currentA);
            CableTree.drops(parent, loopOhm, currentA, dropV);
        }
    }

    /** For each node what its load has of something, 0 where there is none or it is off. */
    private double[] loads(Predicate<Load> isOn, ToDoubleFunction<Load> figure) {
        double[] all = new double[nodes.size()];
        for (Load load : tree.loads()) {
            Integer node = nodes.get(load.id());
            if (node != null && isOn.test(load)) {
                all[node] = figure.applyAsDouble(load);
            }
        }
        return all;
    }

    private static double loop(ElectricalCode code, Circuit circuit, PowerCable cable, Sizes sizes) {
        return sizes.of(cable)
                .map(size -> new CircuitWires(code, circuit)
                        .loop(size, cable.route().length())
                        .value()
                        .si())
                .orElse(Double.NaN);
    }

    /** That a load draws; empty if it is not reached. */
    Optional<Current> drawn(LoadId load) {
        return Optional.ofNullable(nodes.get(load)).map(node -> new Current(loadA[node]));
    }

    /** Through the cable that ends at a thing, or that the panel gives; empty if the thing is not reached. */
    Optional<Current> current(WireEndId end) {
        return Optional.ofNullable(nodes.get(end)).map(node -> new Current(currentA[node]));
    }

    /** Through a cable; empty if it leads nowhere. */
    Optional<Current> current(CableId cable) {
        return nodes.keySet().stream()
                .filter(end ->
                        tree.feeding(end).filter(one -> one.id().equals(cable)).isPresent())
                .findFirst()
                .flatMap(this::current);
    }

    /** Lost on the way from the panel; empty while a conductor on the way is not known, or if no way leads there. */
    Optional<Voltage> lost(WireEndId end) {
        return Optional.ofNullable(nodes.get(end))
                .filter(node -> !Double.isNaN(dropV[node]))
                .map(node -> new Voltage(dropV[node]));
    }
}
