package leat.calc.wiring;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.id.ConduitId;
import leat.model.id.ManifoldId;
import leat.model.id.WireEndId;
import leat.model.plan.Yard;
import leat.model.power.Cable;
import leat.model.power.Circuit;
import leat.model.power.Conduit;
import leat.model.power.Controller;
import leat.model.power.Load;
import leat.model.power.Panel;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.power.StructureFeed;
import leat.model.power.ValveCable;
import leat.model.quantity.Angle;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.water.Manifold;

/** What can be said about the wiring without a single figure of electricity: what leads where, and what shares a conduit. */
final class LayoutReview {

    private final Yard yard;
    private final PowerSystem power;
    private final ElectricalCode code;
    private final Looks looks;
    private final SortedMap<WireEndId, Point> places = new TreeMap<>();

    LayoutReview(Yard yard, ElectricalCode code, Looks looks) {
        this.yard = yard;
        this.power = yard.power();
        this.code = code;
        this.looks = looks;
        power.panels().forEach(one -> places.put(one.id(), one.at()));
        power.switches().forEach(one -> places.put(one.id(), one.at()));
        power.loads().forEach(one -> places.put(one.id(), one.at()));
        yard.water().manifolds().forEach(one -> places.put(one.id(), one.at()));
    }

    /** @param trees of all circuits */
    void look(List<CircuitTree> trees) {
        power.loads()
                .filter(load -> load.isWired() && load.circuit().isEmpty())
                .forEach(load -> looks.note(
                        looks.rule("power.circuit"),
                        Subject.of(load.id()),
                        "let circuits be planned, or state the one that feeds it"));
        trees.forEach(tree -> tree.unreached()
                .forEach(load -> looks.note(
                        looks.rule("power.cable"),
                        Subject.of(load),
                        "let cables be planned, or state those that lead to it from its panel")));
        power.panels().forEach(this::look);
        power.conduits().forEach(this::look);
        power.cables().forEach(this::look);
        lookAtControllers();
        lookAtManifolds();
        addNotes();
    }

    /** Circuits with a cable that is there have their breaker already; two live wires beside a neutral take two ways. */
    private void look(Panel panel) {
        int ways = power.circuitsFrom(panel.id()).stream()
                .filter(this::isNew)
                .mapToInt(one -> one.liveWires() - 1)
                .sum();
        looks.hold(
                looks.rule("power.ways"),
                Subject.of(panel.id(), "spareWays"),
                Count.of(ways),
                panel.spareWays(),
                "put loads together on fewer circuits, or have an electrician add a panel");
    }

    private boolean isNew(Circuit circuit) {
        return power.cablesOf(circuit.id()).stream().noneMatch(PowerCable::existing);
    }

    private void look(Conduit conduit) {
        List<Cable> cables = power.cablesIn(conduit.id());
        int valves = count(cables, WireKind.VALVES);
        int lamps = count(cables, WireKind.LAMPS);
        boolean isPower = valves + lamps < cables.size() || !conduit.occupied().isEmpty();
        if (isPower) {
            looks.hold(
                    code.mixing(),
                    Subject.of(conduit.id()),
                    Count.of(valves + lamps),
                    lamps == 0
                            ? "lead valve wires through a conduit of their own, apart from power"
                            : "lead wires of low voltage through a conduit of their own, apart from power");
        } else if (lamps > 0) {
            looks.hold(
                    code.mixing(),
                    Subject.of(conduit.id()),
                    Count.of(valves),
                    "lead valve wires through a conduit of their own, apart from lamps");
        }
        if (!conduit.existing()) {
            looks.hold(
                    code.bendLimit(),
                    Subject.of(conduit.id()),
                    Angle.degrees(Pulls.bendsDegrees(conduit.route().points(), conduit.series())),
                    "set a box where wires can be pulled, or lead it straighter");
        }
    }

    private int count(List<Cable> cables, WireKind kind) {
        return (int)
                cables.stream().filter(one -> WireKind.of(power, one) == kind).count();
    }

    private void look(Cable cable) {
        holdEnd(cable, cable.from(), "from", cable.route().start());
        holdEnd(cable, cable.to(), "to", cable.route().end());
        for (ConduitId id : cable.conduits()) {
            Optional<Conduit> conduit = power.conduit(id);
            if (conduit.isPresent()) {
                double awayM = Math.max(
                        awayM(cable, conduit.get().route().start()),
                        awayM(cable, conduit.get().route().end()));
                looks.hold(
                        looks.rule("power.touch"),
                        Subject.of(cable.id(), "conduits"),
                        new Length(awayM),
                        "lead it through the conduits that it names");
            }
        }
    }

    private static double awayM(Cable cable, Point point) {
        return cable.route().nearest(point).distanceM(point);
    }

    private void holdEnd(Cable cable, WireEndId end, String field, Point at) {
        Point place = places.get(end);
        if (place != null) {
            looks.hold(
                    looks.rule("power.touch"),
                    Subject.of(cable.id(), field),
                    place.distance(at),
                    "lead it to what it names");
        }
    }

    private void lookAtControllers() {
        for (Controller controller : power.controllers()) {
            int valves = power.valveCables().stream()
                    .filter(cable -> cable.from().equals(controller.id()))
                    .map(ValveCable::to)
                    .distinct()
                    .flatMap(id -> manifold(id).stream())
                    .mapToInt(one -> one.valves().size())
                    .sum();
            looks.hold(
                    looks.rule("power.stations"),
                    Subject.of(controller.id(), "stations"),
                    Count.of(valves),
                    Count.of(controller.stations()),
                    "choose one with more stations, or a second one");
        }
        for (ValveCable cable : power.valveCables()) {
            int needed =
                    manifold(cable.to()).map(one -> one.valves().size() + 1).orElse(0);
            looks.hold(
                    looks.rule("power.strands"),
                    Subject.of(cable.id(), "strands"),
                    Count.of(cable.strands()),
                    Count.of(needed),
                    "take wires with one strand for each valve, a common one, and spares");
        }
    }

    private Optional<Manifold> manifold(ManifoldId id) {
        return yard.water().manifolds().stream()
                .filter(one -> one.id().equals(id))
                .findFirst();
    }

    private void lookAtManifolds() {
        if (power.controllers().isEmpty()) {
            return;
        }
        for (Manifold manifold : yard.water().manifolds()) {
            boolean wired =
                    power.valveCables().stream().anyMatch(one -> one.to().equals(manifold.id()));
            if (!wired && !manifold.valves().isEmpty()) {
                looks.note(
                        looks.rule("power.valves"),
                        Subject.of(manifold.id()),
                        "let valve wires be planned, or state those that lead to it");
            }
        }
    }

    /** What is left to others, whatever the plan says. */
    private void addNotes() {
        for (Load load : power.loads().toList()) {
            if (load instanceof StructureFeed) {
                code.atStructure()
                        .forEach(rule -> looks.note(
                                rule, Subject.of(load.id()), "ask the licensed electrician who joins it for it"));
            }
        }
        if (power.circuits().stream().anyMatch(one -> !one.isLowVoltage() && isNew(one))) {
            looks.note(
                    looks.rule("power.permit"),
                    Subject.yard(),
                    "ask the local authority for a permit and for inspection before trenches are filled");
        }
    }
}
