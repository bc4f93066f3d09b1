package leat.calc.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.finding.Reason;
import leat.model.finding.Subject;
import leat.model.id.CircuitId;
import leat.model.id.LoadId;
import leat.model.id.SurfaceId;
import leat.model.power.Circuit;
import leat.model.power.Controller;
import leat.model.power.Load;
import leat.model.power.Luminaire;
import leat.model.power.Outlet;
import leat.model.power.Panel;
import leat.model.power.PowerSystem;
import leat.model.power.StructureFeed;
import leat.model.power.Transformer;
import leat.model.power.WiringMethod;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;

/**
 * Gives each load without a circuit one: each structure its own, outlets together, luminaires together, a controller or a
 * transformer with its structure or else with the outlets, lamps of low voltage behind their transformer. Circuits are named after what they feed.
 */
final class CircuitChoice {

    private final PowerSystem power;
    private final GivenWiring given;
    private final CircuitRules rules;
    private final WiringMethod method;
    private final List<Circuit> circuits;
    private final SortedMap<LoadId, CircuitId> chosen = new TreeMap<>();
    private final SortedSet<CircuitId> names = new TreeSet<>();
    private final List<Reason> reasons = new ArrayList<>();

    CircuitChoice(PowerSystem power, GivenWiring given, CircuitRules rules, WiringMethod method) {
        this.power = power;
        this.given = given;
        this.rules = rules;
        this.method = method;
        circuits = new ArrayList<>(given.circuits());
        circuits.forEach(one -> names.add(one.id()));
    }

    /** Loads that share a circuit, in the order in which they were put there. */
    private record Share(Panel panel, List<Load> loads) {

        List<Load> with(Load more) {
            List<Load> all = new ArrayList<>(loads);
            all.add(more);
            return all;
        }
    }

    void choose() {
        List<Load> free = power.loads()
                .filter(load -> load.isWired() && !isLamp(load) && !given.hasCircuit(load))
                .toList();
        chooseForLamps();
        if (free.isEmpty()) {
            return;
        }
        if (power.panels().isEmpty()) {
            free.forEach(load -> reasons.add(
                    new Reason(Subject.of(load.id()), "there is no panel from which a circuit could start")));
            return;
        }
        free.stream()
                .filter(StructureFeed.class::isInstance)
                .forEach(feed -> start(feed.id().name(), List.of(feed)));
        List<Load> plugged =
                new ArrayList<>(free.stream().filter(Outlet.class::isInstance).toList());
        for (Load load : free) {
            if (load instanceof Controller || load instanceof Transformer) {
                ofStructure(load).ifPresentOrElse(circuit -> chosen.put(load.id(), circuit), () -> plugged.add(load));
            }
        }
        shares(plugged).forEach(share -> start(stem(share, "outlets"), share.loads()));
        shares(free.stream().filter(Luminaire.class::isInstance).toList())
                .forEach(share -> start(stem(share, "lights"), share.loads()));
    }

    /** A circuit is named after the one thing on it, or after their kind. */
    private static String stem(Share share, String several) {
        return share.loads().size() == 1 ? share.loads().get(0).id().name() : several;
    }

    private static boolean isLamp(Load load) {
        return load instanceof Luminaire light && light.lamp().isPresent();
    }

    /** Fills one circuit of each transformer after another. */
    private void chooseForLamps() {
        for (Transformer transformer : power.transformers()) {
            List<Load> lamps = power.luminaires().stream()
                    .filter(one -> one.lamp()
                            .filter(lamp -> lamp.transformer().equals(transformer.id()))
                            .isPresent())
                    .filter(one -> !given.hasCircuit(one))
                    .map(Load.class::cast)
                    .toList();
            for (List<Load> share : rules.lampShares(transformer, lamps)) {
                boolean now = share.stream().anyMatch(load -> load.phase() == Phase.NOW);
                CircuitId id = next(transformer.id().name() + " lamps");
                Voltage tap = transformer.taps().get(0);
                circuits.add(new Circuit(
                        id,
                        transformer.id(),
                        rules.lampBreaker(transformer, tap),
                        tap,
                        2,
                        false,
                        WiringMethod.BURIED_CABLE,
                        now ? Phase.NOW : Phase.LATER));
                share.forEach(load -> chosen.put(load.id(), id));
            }
        }
    }

    /** The supply of the structure in which something hangs, unless it comes later than that. */
    private Optional<CircuitId> ofStructure(Load load) {
        Optional<SurfaceId> inside = load instanceof Controller controller
                ? controller.inside()
                : load instanceof Transformer transformer ? transformer.inside() : Optional.empty();
        return power.feeds().stream()
                .filter(feed -> inside.filter(feed.structure()::equals).isPresent())
                .filter(feed -> feed.phase() == Phase.NOW || load.phase() == Phase.LATER)
                .flatMap(feed -> circuitOf(feed).stream())
                .findFirst();
    }

    private Optional<CircuitId> circuitOf(Load load) {
        return given.hasCircuit(load) ? load.circuit() : Optional.ofNullable(chosen.get(load.id()));
    }

    /** Fills one circuit after another; a load that alone is too much for one gets one of its own. */
    private List<Share> shares(List<Load> loads) {
        List<Share> shares = new ArrayList<>();
        for (Load load : loads) {
            Panel panel = panelFor(load);
            Share open = shares.stream()
                    .filter(share -> share.panel().equals(panel) && rules.fits(panel, share.with(load)))
                    .findFirst()
                    .orElse(null);
            if (open == null) {
                open = new Share(panel, new ArrayList<>());
                shares.add(open);
            }
            open.loads().add(load);
        }
        return shares;
    }

    /** The nearest of the panels that are there when the load is. */
    private Panel panelFor(Load load) {
        return power.panels().stream()
                .min(Comparator.comparing((Panel panel) -> panel.phase() == Phase.LATER && load.phase() == Phase.NOW)
                        .thenComparingDouble(panel -> panel.at().distanceM(load.at()))
                        .thenComparing(Panel::id))
                .orElseThrow();
    }

    private void start(String stem, List<Load> loads) {
        Panel panel = panelFor(loads.get(0));
        CircuitRules.Supply supply = rules.supply(panel, loads);
        boolean now = loads.stream().anyMatch(load -> load.phase() == Phase.NOW);
        CircuitId id = next(stem);
        circuits.add(new Circuit(
                id,
                panel.id(),
                supply.breaker(),
                supply.voltage(),
                supply.liveWires(),
                rules.asksGroundFault(loads, supply),
                method,
                now ? Phase.NOW : Phase.LATER));
        loads.forEach(load -> chosen.put(load.id(), id));
    }

    private CircuitId next(String stem) {
        var id = new CircuitId(stem);
        for (int number = 2; names.contains(id); number++) {
            id = new CircuitId(stem + " " + number);
        }
        names.add(id);
        return id;
    }

    List<Circuit> circuits() {
        return circuits;
    }

    /** All loads with their circuits, given and chosen. */
    List<Load> loads() {
        return power.loads()
                .map(load ->
                        given.hasCircuit(load) ? load : load.withCircuit(Optional.ofNullable(chosen.get(load.id()))))
                .toList();
    }

    SortedSet<LoadId> chosen() {
        return new TreeSet<>(chosen.keySet());
    }

    List<Reason> reasons() {
        return reasons;
    }
}
