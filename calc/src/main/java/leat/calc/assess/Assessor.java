package leat.calc.assess;

import java.util.Map;
import java.util.TreeMap;
import leat.calc.Progress;
import leat.calc.budget.Budget;
import leat.calc.budget.BudgetParameters;
import leat.calc.coverage.Coverage;
import leat.calc.coverage.CoverageParameters;
import leat.calc.coverage.CoverageResult;
import leat.calc.coverage.WorkingHead;
import leat.calc.digging.Digging;
import leat.calc.hydraulics.HeadPressure;
import leat.calc.hydraulics.Hydraulics;
import leat.calc.hydraulics.HydraulicsParameters;
import leat.calc.hydraulics.HydraulicsResult;
import leat.calc.phasing.Phasing;
import leat.calc.phasing.PhasingParameters;
import leat.calc.schedule.Schedule;
import leat.calc.sizing.SizeReview;
import leat.calc.sizing.SizingParameters;
import leat.calc.staking.Staking;
import leat.calc.staking.StakingParameters;
import leat.calc.supply.Supply;
import leat.calc.supply.SupplyParameters;
import leat.calc.takeoff.Takeoff;
import leat.calc.takeoff.TakeoffParameters;
import leat.calc.trenching.TrenchReview;
import leat.calc.trenching.TrenchReviewParameters;
import leat.calc.wiring.WiringReview;
import leat.calc.wiring.WiringReviewParameters;
import leat.calc.workplan.WorkPlan;
import leat.calc.workplan.WorkPlanParameters;
import leat.calc.zoning.ZoneReview;
import leat.calc.zoning.ZoningParameters;
import leat.model.catalog.HeadFamily;
import leat.model.geometry.Sector;
import leat.model.id.HeadId;
import leat.model.plan.Site;
import leat.model.quantity.Length;
import leat.model.water.Head;

/** Runs every calculation on a site, each on the results that it needs. */
public final class Assessor {

    private Assessor() {}

    /** With the defaults of each calculation; changes nothing. */
    public static Assessment run(Site site, Progress progress) {
        progress.at(0, "supply");
        var supply = Supply.run(site, SupplyParameters.defaults(), progress);
        progress.at(0.1, "pressures");
        HydraulicsResult hydraulics = Hydraulics.run(site, HydraulicsParameters.defaults(), progress);
        var sizes = SizeReview.run(site, SizingParameters.defaults(), progress);
        var zoning = ZoneReview.run(site, ZoningParameters.defaults(), progress);
        progress.at(0.4, "coverage");
        CoverageResult coverage =
                Coverage.run(site, CoverageParameters.defaults().withWorking(working(site, hydraulics)), progress);
        progress.at(0.8, "trenches");
        var trenching = TrenchReview.run(site, TrenchReviewParameters.defaults(), progress);
        progress.at(0.85, "wiring");
        var wiring = WiringReview.run(site, WiringReviewParameters.defaults(), progress);
        var digging = Digging.run(site, Assessment.digging(wiring), progress);
        var staking = Staking.run(site, StakingParameters.defaults(), progress);
        var phasing = Phasing.run(site, PhasingParameters.defaults(), progress);
        var workPlan = WorkPlan.run(site, WorkPlanParameters.of(digging, phasing), progress);
        progress.at(0.9, "takeoff");
        var counting = TakeoffParameters.defaults().withWiring(wiring).withDigging(digging);
        var takeoff = Takeoff.run(site, counting, progress);
        var budget = Budget.run(site, BudgetParameters.of(takeoff), progress);
        progress.at(0.95, "watering schedule");
        var schedule = Schedule.run(site, Assessment.scheduling(coverage, hydraulics, zoning), progress);
        return new Assessment(
                site,
                supply,
                hydraulics,
                sizes,
                zoning,
                coverage,
                trenching,
                wiring,
                digging,
                staking,
                phasing,
                workPlan,
                takeoff,
                budget,
                schedule);
    }

    /** What each head that throws reaches and gives at the pressure that it has; heads without a solved zone are left out. */
    private static Map<HeadId, WorkingHead> working(Site site, HydraulicsResult hydraulics) {
        Map<HeadId, WorkingHead> working = new TreeMap<>();
        for (Head head : site.yard().water().heads()) {
            HeadFamily family = site.catalog().head(head.family());
            head.sector()
                    .map(Sector::radius)
                    .ifPresent(set ->
                            hydraulics.head(head.id()).ifPresent(got -> working.put(head.id(), at(got, set, family))));
        }
        return working;
    }

    private static WorkingHead at(HeadPressure got, Length set, HeadFamily family) {
        return new WorkingHead(family.radius(set, got.pressure()), got.flow());
    }
}
