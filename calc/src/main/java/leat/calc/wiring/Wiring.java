package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
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
import leat.model.finding.Subject;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.Id;
import leat.model.id.LaidId;
import leat.model.id.SegmentId;
import leat.model.plan.Aspect;
import leat.model.plan.Planned;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.power.Conduit;
import leat.model.power.PowerSystem;
import leat.model.site.Phase;
import leat.model.trench.TrenchSegment;

/**
 * The stage that gives every load a circuit, leads cables and valve wires along shared trenches and through conduits that
 * are there, and chooses their sizes. Given circuits, cables, conduits and trenches stay. It runs after the pipes are
 * routed, since wires share their trenches; all planned trenches are cut anew for what lies in them.
 */
public final class Wiring {

    private Wiring() {}

    /** Gives the yard with all planned circuits, cables, conduits and sizes made anew. */
    public static Proposal run(Site site, WiringParameters parameters, Progress progress) {
        Yard yard = site.yard();
        if (yard.power().isEmpty()) {
            return new Proposal(yard, Status.COMPLETE, List.of(), List.of());
        }
        DigSite dig = DigSite.of(site, parameters.trenches());
        if (dig.open().isEmpty()) {
            var reason = new Reason(Subject.yard(), "no ground is left in which a trench may run");
            return new Proposal(yard, Status.PARTIAL, List.of(), List.of(reason));
        }
        var given = new GivenWiring(yard);
        var choice = new CircuitChoice(yard.power(), given, new CircuitRules(), parameters.method());
        choice.choose();
        PowerSystem chosen = yard.power()
                .with(choice.circuits(), choice.loads(), given.conduits(), given.powerCables(), given.valveCables());
        SortedMap<Id, SortedSet<ConduitId>> full = new TreeMap<>();
        var buildings = new Buildings(yard.terrain());
        var draft = new WiringDraft(
                given,
                TrenchWorks.of(yard, given, buildings),
                parameters.series().orElse(usualSeries(yard)),
                360);
        var pass = new WiringPass(site, given, chosen, parameters, dig, draft, full, progress);
        pass.lead();
        List<Reason> reasons = new ArrayList<>(choice.reasons());
        reasons.addAll(pass.reasons());
        Status status = pass.interrupted() ? Status.STOPPED : reasons.isEmpty() ? Status.COMPLETE : Status.PARTIAL;
        PowerSystem wired = chosen.with(
                choice.circuits(), choice.loads(), draft.conduits(), draft.powerCables(), draft.valveCables());
        List<TrenchSegment> trenches = trenches(site, given, wired, draft, dig, parameters);
        return new Proposal(changed(yard, given, choice, draft, wired, trenches), status, List.of(), reasons);
    }

    private static String usualSeries(Yard yard) {
        return switch (yard.codeFamily()) {
            case NFPA_70 -> Conduit.USUAL_US;
            case IEC_60364 -> Conduit.USUAL_METRIC;
        };
    }

    private static List<TrenchSegment> trenches(
            Site site,
            GivenWiring given,
            PowerSystem wired,
            WiringDraft draft,
            DigSite dig,
            WiringParameters parameters) {
        Trenchwork work =
                TrenchWorks.of(site.yard(), given, new Buildings(site.yard().terrain()));
        draft.layInto(work);
        work.cutAtCorners();
        SortedSet<LaidId> now = new TreeSet<>();
        wired.conduits().stream().filter(one -> one.phase() == Phase.NOW).forEach(one -> now.add(one.id()));
        wired.cables().filter(one -> one.phase() == Phase.NOW).forEach(one -> now.add(one.id()));
        var pipes = new PipeLaying(
                site.rules(), site.yard().water(), parameters.trenches().below());
        var laying = new WireLaying(pipes, new WireCovers(parameters.trenches().below()), now);
        List<TrenchSegment> trenches = new ArrayList<>(given.trenches());
        SortedSet<SegmentId> taken = new TreeSet<>();
        trenches.forEach(trench -> taken.add(trench.id()));
        trenches.addAll(new TrenchCuts(dig.byHand(), laying).cut(work, taken));
        return trenches;
    }

    private static Yard changed(
            Yard yard,
            GivenWiring given,
            CircuitChoice choice,
            WiringDraft draft,
            PowerSystem wired,
            List<TrenchSegment> trenches) {
        Planned planned = yard.planned()
                .only(Yard.plannable(yard.water(), wired, trenches))
                .with(choice.chosen(), Aspect.CIRCUIT)
                .with(draft.madeCables(), Aspect.ROUTE)
                .with(draft.madeConduits(), Aspect.ROUTE);
        SortedSet<CircuitId> made = new TreeSet<>();
        wired.circuits().forEach(one -> made.add(one.id()));
        given.circuits().forEach(one -> made.remove(one.id()));
        SortedSet<SegmentId> dug = new TreeSet<>();
        trenches.forEach(one -> dug.add(one.id()));
        given.trenches().forEach(one -> dug.remove(one.id()));
        planned = planned.with(made, Aspect.CIRCUIT).with(dug, Aspect.ROUTE);
        return yard.changed(yard.water(), wired, trenches, planned);
    }
}
