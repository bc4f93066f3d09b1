package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.calc.internal.routes.Trenchwork;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.id.CableId;
import leat.model.id.ConduitId;
import leat.model.id.ControllerId;
import leat.model.id.LaidId;
import leat.model.id.ManifoldId;
import leat.model.power.Ahead;
import leat.model.power.Circuit;
import leat.model.power.Conduit;
import leat.model.power.PowerCable;
import leat.model.power.ValveCable;
import leat.model.power.WiringMethod;

/** What the stage has laid so far: cables, and the conduits and trenches that they lie in. Used once. */
final class WiringDraft {

    /** A conduit shorter than this is a hole through a wall. */
    private static final double LEAST_CONDUIT_M = 0.05;

    private final GivenWiring given;
    private final String series;
    private final double mostBendsDegrees;
    private final Trenchwork work;

    /** All that was laid in the ground, in its order: the trenches are cut from it once more when all is known. */
    private final List<Buried> buried = new ArrayList<>();

    private final List<Conduit> conduits;
    private final List<PowerCable> powerCables;
    private final List<ValveCable> valveCables;
    private final SortedSet<CableId> madeCables = new TreeSet<>();
    private final SortedMap<ConduitId, WireKind> made = new TreeMap<>();

    /** @param work all else that lies in new trenches */
    WiringDraft(GivenWiring given, Trenchwork work, String series, double mostBendsDegrees) {
        this.given = given;
        this.work = work;
        this.series = series;
        this.mostBendsDegrees = mostBendsDegrees;
        conduits = new ArrayList<>(given.conduits());
        powerCables = new ArrayList<>(given.powerCables());
        valveCables = new ArrayList<>(given.valveCables());
    }

    private record Buried(LaidId laid, List<Point> route) {}

    private void bury(LaidId laid, List<Point> route) {
        buried.add(new Buried(laid, route));
        work.addSnapped(laid, route);
    }

    void layInto(Trenchwork other) {
        buried.forEach(one -> other.addSnapped(one.laid(), one.route()));
    }

    void lay(Wire wire, Circuit circuit, Ahead laid) {
        CableId id = name(wire);
        List<ConduitId> through = circuit.method() == WiringMethod.IN_CONDUIT
                ? conduits(wire, id, laid, WireKind.of(circuit))
                : bare(wire, id);
        powerCables.add(new PowerCable(
                id,
                circuit.id(),
                wire.from(),
                wire.to(),
                new Polyline(wire.points()),
                through,
                given.statedConductor(id),
                false,
                PhaseChoice.ofWire(laid)));
        madeCables.add(id);
    }

    void lay(Wire wire, ControllerId from, ManifoldId to, int strands, WiringMethod method, Ahead laid) {
        CableId id = name(wire);
        List<ConduitId> through =
                method == WiringMethod.IN_CONDUIT ? conduits(wire, id, laid, WireKind.VALVES) : bare(wire, id);
        valveCables.add(new ValveCable(
                id,
                from,
                to,
                new Polyline(wire.points()),
                through,
                given.statedConductor(id),
                strands,
                false,
                PhaseChoice.ofWire(laid)));
        madeCables.add(id);
    }

    /** Cables are named after what they join. */
    private CableId name(Wire wire) {
        String stem = wire.from().name() + " to " + wire.to().name();
        var id = new CableId(stem);
        for (int number = 2; hasCable(id); number++) {
            id = new CableId(stem + " " + number);
        }
        return id;
    }

    private boolean hasCable(CableId id) {
        return powerCables.stream().anyMatch(one -> one.id().equals(id))
                || valveCables.stream().anyMatch(one -> one.id().equals(id));
    }

    private List<ConduitId> bare(Wire wire, CableId id) {
        List<ConduitId> through = new ArrayList<>();
        for (WireLeg leg : wire.legs()) {
            leg.conduit().ifPresent(through::add);
            if (leg.isInGround()) {
                bury(id, leg.points());
            }
        }
        return through;
    }

    private List<ConduitId> conduits(Wire wire, CableId cable, Ahead laid, WireKind kind) {
        List<ConduitId> through = new ArrayList<>();
        for (WireLeg leg : wire.legs()) {
            leg.conduit().ifPresent(through::add);
            if (leg.isInGround() && leg.lengthM() >= LEAST_CONDUIT_M) {
                for (List<Point> pull : Pulls.split(leg.points(), series, mostBendsDegrees)) {
                    through.add(conduit(pull, cable, laid, kind));
                }
            }
        }
        return through;
    }

    /** The conduit of another circuit that runs the very same way, or else a new one. */
    private ConduitId conduit(List<Point> pull, CableId cable, Ahead laid, WireKind kind) {
        var route = new Polyline(pull);
        for (int i = 0; i < conduits.size(); i++) {
            Conduit one = conduits.get(i);
            boolean sameWay =
                    one.route().equals(route) || one.route().reversed().equals(route);
            if (kind != WireKind.VALVES && sameWay && made.get(one.id()) == kind) {
                conduits.set(i, earlier(one, laid));
                return one.id();
            }
        }
        ConduitId id = name(cable);
        conduits.add(new Conduit(
                id, route, series, given.statedSize(id, series), false, List.of(), PhaseChoice.ofConduit(laid)));
        made.put(id, kind);
        bury(id, pull);
        return id;
    }

    private static Conduit earlier(Conduit one, Ahead laid) {
        return PhaseChoice.ofConduit(laid).compareTo(one.phase()) < 0
                ? new Conduit(
                        one.id(),
                        one.route(),
                        one.series(),
                        one.size(),
                        one.existing(),
                        one.occupied(),
                        PhaseChoice.ofConduit(laid))
                : one;
    }

    /** Conduits are named after the first cable in them. */
    private ConduitId name(CableId cable) {
        var id = new ConduitId(cable.name());
        for (int number = 2; hasConduit(id); number++) {
            id = new ConduitId(cable.name() + " " + number);
        }
        return id;
    }

    private boolean hasConduit(ConduitId id) {
        return conduits.stream().anyMatch(one -> one.id().equals(id));
    }

    Optional<String> statedConductor(CableId id) {
        return given.statedConductor(id);
    }

    Optional<String> statedSize(ConduitId id) {
        return given.statedSize(id, series);
    }

    Trenchwork work() {
        return work;
    }

    List<Conduit> conduits() {
        return conduits;
    }

    List<PowerCable> powerCables() {
        return powerCables;
    }

    List<ValveCable> valveCables() {
        return valveCables;
    }

    SortedSet<CableId> madeCables() {
        return madeCables;
    }

    SortedSet<ConduitId> madeConduits() {
        return new TreeSet<>(made.keySet());
    }
}
