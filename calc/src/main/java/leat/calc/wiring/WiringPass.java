package leat.calc.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.calc.Progress;
import leat.calc.internal.routes.DigSite;
import leat.calc.internal.routes.RouteSearch;
import leat.model.finding.Reason;
import leat.model.finding.Subject;
import leat.model.id.ConduitId;
import leat.model.id.Id;
import leat.model.id.WireEndId;
import leat.model.plan.Site;
import leat.model.power.Ahead;
import leat.model.power.Cable;
import leat.model.power.Circuit;
import leat.model.power.Conduit;
import leat.model.power.Controller;
import leat.model.power.PowerSystem;
import leat.model.power.ValveCable;
import leat.model.site.Phase;
import leat.model.water.Manifold;

/** Leads all wires once, one circuit after another; what was led before makes trenches that others may share. */
final class WiringPass {

    private final Site site;
    private final GivenWiring given;
    private final PowerSystem power;
    private final WiringParameters parameters;
    private final DigSite dig;
    private final Buildings buildings;
    private final WiringDraft draft;
    private final Progress progress;
    private final SortedMap<Id, SortedSet<ConduitId>> full;
    private final List<Reason> reasons = new ArrayList<>();
    private boolean interrupted;

    /**
     * @param power with all circuits chosen
     * @param full  conduits that had no room for all wires of a circuit or a controller
     */
    WiringPass(
            Site site,
            GivenWiring given,
            PowerSystem power,
            WiringParameters parameters,
            DigSite dig,
            WiringDraft draft,
            SortedMap<Id, SortedSet<ConduitId>> full,
            Progress progress) {
        this.site = site;
        this.given = given;
        this.power = power;
        this.parameters = parameters;
        this.dig = dig;
        this.draft = draft;
        this.full = full;
        this.progress = progress;
        this.buildings = new Buildings(site.yard().terrain());
    }

    void lead() {
        List<Circuit> circuits = power.circuits().stream()
                .sorted(Comparator.comparing(Circuit::phase).thenComparing(Circuit::id))
                .toList();
        for (Circuit circuit : circuits) {
            progress.at(0, "circuit " + circuit.id());
            lead(new CircuitRoutes(power, given.powerCables(), circuit));
        }
        var valves = new ValveRoutes(site.yard(), given.valveCables(), parameters);
        reasons.addAll(valves.reasons());
        for (Controller controller : power.controllers()) {
            progress.at(0.5, "valve wires of " + controller.id());
            lead(controller, valves);
        }
    }

    private void lead(CircuitRoutes routes) {
        if (routes.isDone()) {
            return;
        }
        Circuit circuit = routes.circuit();
        List<WireEnd> ends = routes.ends();
        WireSearch search = search(ends, conduitsFor(circuit));
        SortedSet<WireEndId> wanted = new TreeSet<>();
        routes.wanted().forEach(end -> wanted.add(end.id()));
        RouteSearch.Found found = search.join(routes.root(), routes.reached(), wanted);
        note(found, search, wanted, circuit.isLowVoltage() ? "the transformer" : "the panel");
        List<Wire> wires = routes.join(search, found);
        SortedMap<Wire, Ahead> laid = new PhaseChoice(power).laidNow(wires);
        wires.forEach(wire -> draft.lay(wire, circuit, laid.getOrDefault(wire, Ahead.NOTHING)));
    }

    private void lead(Controller controller, ValveRoutes valves) {
        List<Manifold> served = valves.servedBy(controller.id());
        if (served.isEmpty()) {
            return;
        }
        List<WireEnd> ends = new ArrayList<>(List.of(ValveRoutes.end(controller)));
        served.forEach(one -> ends.add(ValveRoutes.end(one)));
        WireSearch search = search(ends, conduitsFor(controller));
        SortedSet<WireEndId> wanted = new TreeSet<>();
        served.forEach(one -> wanted.add(one.id()));
        RouteSearch.Found found = search.join(controller.id(), new TreeSet<>(), wanted);
        note(found, search, wanted, "the controller");
        int root = search.place(controller.id());
        for (Manifold one : served) {
            List<Integer> path = found.tree().path(root, search.place(one.id()));
            if (path.size() > 1) {
                var wire = new Wire(controller.id(), one.id(), search.legs(path));
                draft.lay(
                        wire,
                        controller.id(),
                        one.id(),
                        valves.strands(one),
                        parameters.valveWires(),
                        valves.laidNow(controller, one));
            }
        }
    }

    private WireSearch search(List<WireEnd> ends, List<Conduit> conduits) {
        ends.forEach(end -> draft.work().cutNear(end.at()));
        var search = new WireSearch(dig, parameters.search(), buildings, draft.work(), progress);
        search.addEnds(ends);
        search.addConduits(conduits, ends);
        return search;
    }

    private void note(RouteSearch.Found found, WireSearch search, SortedSet<WireEndId> wanted, String from) {
        interrupted |= found.interrupted();
        for (WireEndId end : wanted) {
            if (found.missed().contains(search.place(end))) {
                reasons.add(new Reason(Subject.of(end), "no wire may reach it from " + from));
            }
        }
    }

    /** Given conduits that are there in time, that hold wires of its kind only, and that were not found too full. */
    private List<Conduit> conduitsFor(Circuit circuit) {
        return given.conduits().stream()
                .filter(one -> one.phase() == Phase.NOW || circuit.phase() == Phase.LATER)
                .filter(one -> one.occupied().isEmpty() || !circuit.isLowVoltage())
                .filter(one ->
                        cables(one).stream().allMatch(cable -> WireKind.of(power, cable) == WireKind.of(circuit)))
                .filter(one -> hasRoom(one, circuit.id()))
                .toList();
    }

    /** Given conduits for control: empty, or with valve wires only. What lies in one already may be power. */
    private List<Conduit> conduitsFor(Controller controller) {
        return given.conduits().stream()
                .filter(one -> one.phase() == Phase.NOW || controller.phase() == Phase.LATER)
                .filter(one -> one.occupied().isEmpty() && cables(one).stream().allMatch(ValveCable.class::isInstance))
                .filter(one -> hasRoom(one, controller.id()))
                .toList();
    }

    private boolean hasRoom(Conduit conduit, Id user) {
        return !full.getOrDefault(user, new TreeSet<>()).contains(conduit.id());
    }

    private List<Cable> cables(Conduit conduit) {
        List<Cable> cables = new ArrayList<>(draft.powerCables());
        cables.addAll(draft.valveCables());
        cables.removeIf(cable -> !cable.conduits().contains(conduit.id()));
        return cables;
    }

    List<Reason> reasons() {
        return reasons;
    }

    boolean interrupted() {
        return interrupted;
    }
}
