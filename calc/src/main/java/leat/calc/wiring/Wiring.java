package leat.calc.wiring;

import java.util.List;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.calc.internal.routes.DigSite;
import leat.model.finding.Reason;
import leat.model.finding.Status;
import leat.model.finding.Subject;
import leat.model.plan.Site;

/**
 * The stage that gives every load a circuit, leads cables and valve wires along shared trenches and through conduits that
 * are there, and chooses their sizes. Given circuits, cables, conduits and trenches stay. It runs after the pipes are
 * routed, since wires share their trenches; all planned trenches are cut anew for what lies in them.
 */
public final class Wiring {

    private Wiring() {}

    /** Gives the yard with all planned circuits, cables, conduits and sizes made anew. A yard without power stays as it is. */
    public static Proposal run(Site site, WiringParameters parameters, Progress progress) {
        if (site.yard().power().isEmpty()) {
            return new Proposal(site.yard(), Status.COMPLETE, List.of(), List.of());
        }
        DigSite dig = DigSite.of(site, parameters.trenches());
        if (dig.open().isEmpty()) {
            var reason = new Reason(Subject.yard(), "no ground is left in which a trench may run");
            return new Proposal(site.yard(), Status.PARTIAL, List.of(), List.of(reason));
        }
        return new WiringPlan(site, parameters, dig, progress).plan();
    }
}
