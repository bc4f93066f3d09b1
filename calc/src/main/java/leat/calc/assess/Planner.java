package leat.calc.assess;

import java.util.ArrayList;
import java.util.List;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.calc.placement.Placement;
import leat.calc.sizing.Sizing;
import leat.calc.trenching.Trenching;
import leat.calc.wiring.Wiring;
import leat.calc.zoning.Zoning;
import leat.calc.zoning.ZoningParameters;
import leat.model.finding.Bound;
import leat.model.finding.Reason;
import leat.model.finding.Status;
import leat.model.plan.Site;

/** From a survey to planned water and power: all stages in their order, each on what the one before proposed. */
public final class Planner {

    private Planner() {}

    /** A stage as the planner sees it: its parameters are in it. */
    private interface Stage {
        Proposal run(Site site, Progress progress);
    }

    /**
     * Plans what is not given. Planning the answer again with the same parameters changes nothing.
     *
     * @return the yard after the last stage that ran, with the bounds and reasons of all; stopped if a stage was
     */
    public static Proposal run(Site site, PlannerParameters parameters, Progress progress) {
        List<Stage> stages = List.of(
                (here, news) -> Placement.run(here, parameters.placement(), news),
                (here, news) -> Zoning.run(here, zoning(here, parameters, news), news),
                (here, news) -> Trenching.run(here, parameters.trenching(), news),
                (here, news) -> Sizing.run(here, parameters.sizing(), news),
                (here, news) -> Wiring.run(here, parameters.wiring(), news));
        List<Bound> bounds = new ArrayList<>();
        List<Reason> reasons = new ArrayList<>();
        Status status = Status.COMPLETE;
        Site here = site;
        for (Stage stage : stages) {
            Proposal proposal = stage.run(here, progress);
            here = here.with(proposal.yard());
            bounds.addAll(proposal.bounds());
            reasons.addAll(proposal.reasons());
            status = worse(status, proposal.status());
            if (status == Status.STOPPED) {
                break;
            }
        }
        return new Proposal(here.yard(), status, bounds, reasons);
    }

    /** Zones are formed before pipes are led, so they are told where the main to come begins. */
    private static ZoningParameters zoning(Site site, PlannerParameters parameters, Progress progress) {
        ZoningParameters zoning = parameters.zoning();
        return zoning.mostFlow().isPresent()
                ? zoning
                : zoning.withMains(Trenching.mainsToCome(site, parameters.trenching(), progress));
    }

    private static Status worse(Status a, Status b) {
        return a.compareTo(b) >= 0 ? a : b;
    }
}
