package leat.model.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import leat.model.geometry.Bounds;
import leat.model.geometry.Point;
import leat.model.geometry.Region;
import leat.model.id.Id;
import leat.model.id.NaturalOrder;
import leat.model.id.WireEndId;
import leat.model.power.Cable;
import leat.model.power.Circuit;
import leat.model.power.CodeFamily;
import leat.model.power.Conduit;
import leat.model.power.Controller;
import leat.model.power.LightSwitch;
import leat.model.power.Load;
import leat.model.power.Luminaire;
import leat.model.power.Outlet;
import leat.model.power.Panel;
import leat.model.power.PowerCable;
import leat.model.power.PowerSupply;
import leat.model.power.PowerSystem;
import leat.model.power.StructureFeed;
import leat.model.power.Transformer;
import leat.model.power.ValveCable;
import leat.model.site.Surface;

/** What parts of the power turn into, until all names are known. */
final class PowerDraft {

    /** What is made once the panel or the ends that it names are known. */
    private record Wanted<T>(String thing, String from, String to, T maker) {}

    private final YardDraft yard;
    private final PowerSystem before;
    private Optional<CodeFamily> code;
    private final List<Function<CodeFamily, Panel>> panels = new ArrayList<>();
    private final List<Wanted<Function<PowerSupply, Optional<Circuit>>>> circuits = new ArrayList<>();
    private final List<LightSwitch> switches;
    private final List<Supplier<Load>> loads = new ArrayList<>();
    private final List<Supplier<Optional<Transformer>>> transformers = new ArrayList<>();
    private final List<Supplier<Load>> lights = new ArrayList<>();

    /** All that could be made so far, while it is made: outlets stand before transformers, these before lights. */
    private final List<Load> made = new ArrayList<>();

    private final List<String[]> insides = new ArrayList<>();
    private final List<Function<CodeFamily, Conduit>> conduits = new ArrayList<>();
    private final List<Wanted<BiFunction<WireEndId, WireEndId, PowerCable>>> powerCables = new ArrayList<>();
    private final List<ValveCable> valveCables;

    PowerDraft(YardDraft yard, PowerSystem before) {
        this.yard = yard;
        this.before = before;
        code = before.code();
        switches = new ArrayList<>(before.switches());
        valveCables = new ArrayList<>(before.valveCables());
    }

    void code(CodeFamily family) {
        code = Optional.of(family);
    }

    void panel(Function<CodeFamily, Panel> maker) {
        panels.add(maker);
    }

    void circuit(String thing, String supply, Function<PowerSupply, Optional<Circuit>> maker) {
        circuits.add(new Wanted<>(thing, supply, supply, maker));
    }

    void lightSwitch(LightSwitch one) {
        switches.add(one);
    }

    void load(Supplier<Load> maker) {
        loads.add(maker);
    }

    /** One that may be plugged into an outlet; empty if that is not there. */
    void transformer(Supplier<Optional<Transformer>> maker) {
        transformers.add(maker);
    }

    /** A light, which may hang behind a transformer. */
    void light(Supplier<Load> maker) {
        lights.add(maker);
    }

    /** Where the outlet of that name is; complains if there is none. Ask only while transformers are made. */
    Optional<Point> outlet(String thing, String name) {
        return named(thing, "pluggedInto", "outlet", name, Outlet.class).map(Outlet::at);
    }

    /** The transformer of that name; complains if there is none. Ask only while lights are made. */
    Optional<Transformer> transformerOf(String thing, String name) {
        return named(thing, "from", "transformer", name, Transformer.class);
    }

    private <T extends Load> Optional<T> named(String thing, String field, String kind, String name, Class<T> type) {
        SortedMap<String, T> byName = new TreeMap<>(NaturalOrder::compare);
        only(made, type).forEach(one -> byName.put(one.id().name(), one));
        yard.refer(thing, field, name, kind, byName.keySet());
        return Optional.ofNullable(byName.get(name));
    }

    /** That thing is in the structure of that name. */
    void inside(String thing, String structure) {
        insides.add(new String[] {thing, structure});
    }

    void conduit(Function<CodeFamily, Conduit> maker) {
        conduits.add(maker);
    }

    void powerCable(String thing, String from, String to, BiFunction<WireEndId, WireEndId, PowerCable> maker) {
        powerCables.add(new Wanted<>(thing, from, to, maker));
    }

    void valveCable(ValveCable cable) {
        valveCables.add(cable);
    }

    /** The middle of the structure's bounds. Ask only for one that is there. */
    Point middleOf(String structure) {
        Region region = yard.surfaces().stream()
                .filter(one -> one.id().name().equals(structure))
                .map(Surface::region)
                .findFirst()
                .orElseThrow();
        Bounds bounds = region.bounds();
        return new Point((bounds.leastXM() + bounds.mostXM()) / 2, (bounds.leastYM() + bounds.mostYM()) / 2);
    }

    /** All of it; after complaints, only what could be made. */
    PowerSystem build(CodeFamily usual) {
        CodeFamily family = code.orElse(usual);
        if (!structuresAreThere()) {
            return before;
        }
        List<Panel> allPanels = new ArrayList<>(before.panels());
        panels.forEach(maker -> allPanels.add(maker.apply(family)));
        List<Load> allLoads = loads();
        List<Circuit> allCircuits = circuits(allPanels, only(allLoads, Transformer.class));
        List<Conduit> allConduits = new ArrayList<>(before.conduits());
        conduits.forEach(maker -> allConduits.add(maker.apply(family)));
        List<PowerCable> allCables = powerCables(allPanels, allLoads);
        checkNames(allPanels, allCircuits, allLoads, allConduits, allCables);
        if (yard.complained()) {
            return before;
        }
        return new PowerSystem(
                code,
                allPanels,
                allCircuits,
                only(allLoads, Outlet.class),
                only(allLoads, Luminaire.class),
                switches,
                only(allLoads, StructureFeed.class),
                only(allLoads, Controller.class),
                only(allLoads, Transformer.class),
                allConduits,
                allCables,
                valveCables);
    }

    private boolean structuresAreThere() {
        List<String> names =
                yard.surfaces().stream().map(one -> one.id().name()).toList();
        boolean there = true;
        for (String[] inside : insides) {
            yard.refer(inside[0], "structure", inside[1], "structure", names);
            there &= names.contains(inside[1]);
        }
        return there;
    }

    private List<Load> loads() {
        made.clear();
        made.addAll(before.loads().toList());
        loads.forEach(maker -> made.add(maker.get()));
        transformers.forEach(maker -> maker.get().ifPresent(made::add));
        lights.forEach(maker -> made.add(maker.get()));
        return List.copyOf(made);
    }

    private List<Circuit> circuits(List<Panel> allPanels, List<Transformer> allTransformers) {
        SortedMap<String, PowerSupply> byName = new TreeMap<>(NaturalOrder::compare);
        allPanels.forEach(panel -> byName.put(panel.id().name(), panel));
        for (Transformer one : allTransformers) {
            PowerSupply other = byName.put(one.id().name(), one);
            if (other instanceof Panel
                    && circuits.stream().anyMatch(it -> it.from.equals(one.id().name()))) {
                yard.complain("name '" + one.id().name()
                        + "': a panel and a transformer have it; circuits could not tell where they start");
            }
        }
        List<Circuit> all = new ArrayList<>(before.circuits());
        for (Wanted<Function<PowerSupply, Optional<Circuit>>> wanted : circuits) {
            yard.refer(wanted.thing, "from", wanted.from, "panel", byName.keySet());
            Optional.ofNullable(byName.get(wanted.from)).flatMap(wanted.maker).ifPresent(all::add);
        }
        return all;
    }

    private List<PowerCable> powerCables(List<Panel> allPanels, List<Load> allLoads) {
        SortedMap<String, WireEndId> ends = new TreeMap<>();
        allPanels.forEach(panel -> ends.put(panel.id().name(), panel.id()));
        switches.forEach(one -> addEnd(one.id(), ends));
        allLoads.forEach(load -> addEnd(load.id(), ends));
        List<PowerCable> all = new ArrayList<>(before.powerCables());
        for (Wanted<BiFunction<WireEndId, WireEndId, PowerCable>> wanted : powerCables) {
            yard.refer(wanted.thing, "from", wanted.from, "panel, switch or load", ends.keySet());
            yard.refer(wanted.thing, "to", wanted.to, "switch or load", ends.keySet());
            WireEndId from = ends.get(wanted.from);
            WireEndId to = ends.get(wanted.to);
            if (from != null && to != null) {
                all.add(wanted.maker.apply(from, to));
            }
        }
        return all;
    }

    private void addEnd(WireEndId id, SortedMap<String, WireEndId> ends) {
        WireEndId other = ends.put(id.name(), id);
        boolean asked =
                powerCables.stream().anyMatch(wanted -> wanted.from.equals(id.name()) || wanted.to.equals(id.name()));
        if (other != null && !other.equals(id) && asked) {
            yard.complain("name '" + id.name() + "': a " + other.kind() + " and a " + id.kind()
                    + " have it; cables could not tell at which they end");
        }
    }

    private void checkNames(
            List<Panel> allPanels,
            List<Circuit> allCircuits,
            List<Load> allLoads,
            List<Conduit> allConduits,
            List<PowerCable> allCables) {
        SortedSet<String> ofCircuits = names(allCircuits.stream().map(Circuit::id));
        SortedSet<String> ofConduits = names(allConduits.stream().map(Conduit::id));
        SortedSet<String> ofStructures = names(yard.surfaces().stream().map(Surface::id));
        SortedSet<String> ofControllers =
                names(allLoads.stream().filter(Controller.class::isInstance).map(Load::id));
        SortedSet<String> ofManifolds = names(yard.manifolds());
        allPanels.forEach(panel -> panel.inside()
                .ifPresent(one -> yard.refer("panel " + panel.id(), "inside", one.name(), "structure", ofStructures)));
        for (Load load : allLoads) {
            String thing = load.id().kind() + " " + load.id();
            load.circuit().ifPresent(one -> yard.refer(thing, "on", one.name(), "circuit", ofCircuits));
            if (load instanceof Transformer transformer) {
                transformer
                        .inside()
                        .ifPresent(one -> yard.refer(thing, "inside", one.name(), "structure", ofStructures));
            }
            if (load instanceof Controller controller) {
                controller
                        .inside()
                        .ifPresent(one -> yard.refer(thing, "inside", one.name(), "structure", ofStructures));
            }
        }
        Stream.concat(allCables.stream(), valveCables.stream()).forEach(cable -> checkConduits(cable, ofConduits));
        allCables.forEach(cable ->
                yard.refer("cable " + cable.id(), "circuit", cable.circuit().name(), "circuit", ofCircuits));
        for (ValveCable cable : valveCables) {
            yard.refer("valve wires " + cable.id(), "from", cable.from().name(), "controller", ofControllers);
            yard.refer("valve wires " + cable.id(), "to", cable.to().name(), "manifold", ofManifolds);
        }
    }

    private void checkConduits(Cable cable, SortedSet<String> ofConduits) {
        cable.conduits()
                .forEach(one -> yard.refer("cable " + cable.id(), "through", one.name(), "conduit", ofConduits));
    }

    private static SortedSet<String> names(Stream<? extends Id> ids) {
        SortedSet<String> names = new TreeSet<>(NaturalOrder::compare);
        ids.forEach(id -> names.add(id.name()));
        return names;
    }

    private static <T> List<T> only(List<Load> loads, Class<T> type) {
        return loads.stream().filter(type::isInstance).map(type::cast).toList();
    }
}
