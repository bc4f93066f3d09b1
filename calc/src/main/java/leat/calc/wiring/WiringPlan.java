package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.calc.internal.routes.DigSite;
import leat.calc.internal.routes.PipeLaying;
import leat.calc.internal.routes.TrenchCuts;
import leat.calc.internal.routes.Trenchwork;
import leat.model.finding.Reason;
import leat.model.finding.Status;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.Id;
import leat.model.id.LaidId;
import leat.model.id.SegmentId;
import leat.model.plan.Aspect;
import leat.model.plan.Planned;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.power.Cable;
import leat.model.power.Conduit;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.power.ValveCable;
import leat.model.quantity.Length;
import leat.model.site.Phase;
import leat.model.trench.TrenchSegment;

/**
 * One run of the stage. Wires are led through conduits that are there as long as their sizes leave room; where they do
 * not, the last one that was led through is led another way, and all is led once more.
 */
final class WiringPlan {

    private final Site site;
    private final Yard yard;
    private final WiringParameters parameters;
    private final DigSite dig;
    private final Progress progress;
    private final ElectricalCode code;
    private final GivenWiring given;
    private final Buildings buildings;
    private final CircuitRules rules;
    private final CircuitChoice choice;
    private final PowerSystem chosen;

    WiringPlan(Site site, WiringParameters parameters, DigSite dig, Progress progress) {
        this.site = site;
        this.yard = site.yard();
        this.parameters = parameters;
        this.dig = dig;
        this.progress = progress;
        code = ElectricalCode.of(site);
        given = new GivenWiring(yard);
        buildings = new Buildings(yard.terrain());
        rules = new CircuitRules(code, parameters);
        choice = new CircuitChoice(yard.power(), given, rules, parameters.method());
        choice.choose();
        chosen = yard.power()
                .with(choice.circuits(), choice.loads(), given.conduits(), given.powerCables(), given.valveCables());
    }

    /** All that one turn came to. */
    private record Turn(WiringDraft draft, WiringPass pass, WireSizes sizes, PowerSystem wired) {}

    Proposal plan() {
        SortedMap<Id, SortedSet<ConduitId>> full = new TreeMap<>();
        Turn turn = turn(full);
        while (!turn.pass().interrupted() && banOne(turn, full)) {
            turn = turn(full);
        }
        List<Reason> reasons = new ArrayList<>(choice.reasons());
        reasons.addAll(turn.pass().reasons());
        reasons.addAll(turn.sizes().reasons());
        List<TrenchSegment> trenches = trenches(turn);
        return new Proposal(changed(turn, trenches), status(turn, reasons), List.of(), reasons);
    }

    private static Status status(Turn turn, List<Reason> reasons) {
        if (turn.pass().interrupted()) {
            return Status.STOPPED;
        }
        return reasons.isEmpty() ? Status.COMPLETE : Status.PARTIAL;
    }

    private Turn turn(SortedMap<Id, SortedSet<ConduitId>> full) {
        var draft = new WiringDraft(
                given,
                TrenchWorks.of(yard, given, buildings),
                parameters.series().orElse(usualSeries()),
                code.bendLimit().limit().si());
        var pass = new WiringPass(site, given, chosen, parameters, dig, draft, full, progress);
        pass.lead();
        PowerSystem led = chosen.with(
                choice.circuits(), choice.loads(), draft.conduits(), draft.powerCables(), draft.valveCables());
        SortedSet<CableId> cables = new TreeSet<>();
        led.cables().filter(one -> isFree(one, draft)).forEach(one -> cables.add(one.id()));
        SortedSet<ConduitId> conduits = new TreeSet<>();
        led.conduits().stream().filter(one -> isFree(one, draft)).forEach(one -> conduits.add(one.id()));
        var sizes = new WireSizes(site, led, cables, conduits, freeCircuits(led), rules);
        return new Turn(draft, pass, sizes, sizes.choose());
    }

    private SortedSet<CircuitId> freeCircuits(PowerSystem led) {
        SortedSet<CircuitId> free = new TreeSet<>();
        led.circuits().forEach(one -> free.add(one.id()));
        given.circuits().forEach(one -> free.remove(one.id()));
        return free;
    }

    private static boolean isFree(Optional<String> size, boolean made, boolean free) {
        return made ? size.isEmpty() : free;
    }

    private boolean isFree(Cable cable, WiringDraft draft) {
        return isFree(cable.conductor(), draft.madeCables().contains(cable.id()), given.isFree(cable));
    }

    private boolean isFree(Conduit conduit, WiringDraft draft) {
        return isFree(conduit.size(), draft.madeConduits().contains(conduit.id()), given.isFree(conduit));
    }

    private String usualSeries() {
        return switch (yard.codeFamily()) {
            case NFPA_70 -> Conduit.USUAL_US;
            case IEC_60364 -> Conduit.USUAL_METRIC;
        };
    }

    /** Finds a given conduit that is too full and sends the last one led through it another way; false if all have room. */
    private boolean banOne(Turn turn, SortedMap<Id, SortedSet<ConduitId>> full) {
        var contents = new ConduitContents(code, turn.wired());
        for (Conduit conduit : given.conduits()) {
            List<Cable> made = turn.wired().cablesIn(conduit.id()).stream()
                    .filter(one -> turn.draft().madeCables().contains(one.id()))
                    .toList();
            if (!made.isEmpty() && isOverfull(conduit, contents)) {
                Cable last = made.get(made.size() - 1);
                full.computeIfAbsent(user(last), key -> new TreeSet<>()).add(conduit.id());
                return true;
            }
        }
        return false;
    }

    private static Id user(Cable cable) {
        if (cable instanceof PowerCable one) {
            return one.circuit();
        }
        return ((ValveCable) cable).from();
    }

    private boolean isOverfull(Conduit conduit, ConduitContents contents) {
        if (given.isFree(conduit)) {
            return false;
        }
        List<ConduitContent> all = contents.of(conduit).orElse(List.of());
        return conduit.size()
                .filter(size -> !all.isEmpty())
                .map(size -> site.catalog().electrical().conduit(conduit.series(), size))
                .filter(spec -> !code.fillLimit(ConduitContents.count(all))
                        .isKeptBy(code.fill(spec, all).value()))
                .isPresent();
    }

    private List<TrenchSegment> trenches(Turn turn) {
        Trenchwork work = TrenchWorks.of(yard, given, buildings);
        turn.draft().layInto(work);
        work.cutAtCorners();
        SortedSet<LaidId> now = new TreeSet<>();
        turn.wired().conduits().stream().filter(one -> one.phase() == Phase.NOW).forEach(one -> now.add(one.id()));
        turn.wired().cables().filter(one -> one.phase() == Phase.NOW).forEach(one -> now.add(one.id()));
        Length below = parameters.trenches().below();
        var pipes = new PipeLaying(site.rules(), yard.water(), below);
        var laying = new WireLaying(pipes, new WireCovers(site, turn.wired()), below, now);
        List<TrenchSegment> trenches = new ArrayList<>(given.trenches());
        SortedSet<SegmentId> taken = new TreeSet<>();
        trenches.forEach(trench -> taken.add(trench.id()));
        trenches.addAll(new TrenchCuts(dig.byHand(), laying).cut(work, taken));
        return trenches;
    }

    private Yard changed(Turn turn, List<TrenchSegment> trenches) {
        PowerSystem wired = turn.wired();
        SortedSet<CircuitId> circuits = freeCircuits(wired);
        SortedSet<SegmentId> dug = new TreeSet<>();
        trenches.forEach(one -> dug.add(one.id()));
        given.trenches().forEach(one -> dug.remove(one.id()));
        SortedSet<Id> sized = new TreeSet<>();
        wired.cables().filter(one -> isSizedHere(one, turn)).forEach(one -> sized.add(one.id()));
        wired.conduits().stream().filter(one -> isSizedHere(one, turn)).forEach(one -> sized.add(one.id()));
        Planned planned = yard.planned()
                .only(Yard.plannable(yard.water(), wired, trenches))
                .with(choice.chosen(), Aspect.CIRCUIT)
                .with(circuits, Aspect.CIRCUIT)
                .with(turn.draft().madeCables(), Aspect.ROUTE)
                .with(turn.draft().madeConduits(), Aspect.ROUTE)
                .with(sized, Aspect.SIZE)
                .with(dug, Aspect.ROUTE);
        return yard.changed(yard.water(), wired, trenches, planned);
    }

    private boolean isSizedHere(Cable cable, Turn turn) {
        return isFree(
                turn.draft().statedConductor(cable.id()),
                turn.draft().madeCables().contains(cable.id()),
                given.isFree(cable));
    }

    private boolean isSizedHere(Conduit conduit, Turn turn) {
        return isFree(
                turn.draft().statedSize(conduit.id()),
                turn.draft().madeConduits().contains(conduit.id()),
                given.isFree(conduit));
    }
}
