package leat.calc.assess;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import leat.calc.budget.BudgetResult;
import leat.calc.coverage.CoverageResult;
import leat.calc.digging.DiggingParameters;
import leat.calc.digging.DiggingResult;
import leat.calc.hydraulics.HydraulicsResult;
import leat.calc.phasing.PhasingResult;
import leat.calc.schedule.ScheduleParameters;
import leat.calc.schedule.ScheduleResult;
import leat.calc.sizing.SizeReviewResult;
import leat.calc.staking.StakingResult;
import leat.calc.supply.SupplyResult;
import leat.calc.takeoff.TakeoffResult;
import leat.calc.trenching.TrenchReviewResult;
import leat.calc.wiring.WiringResult;
import leat.calc.workplan.WorkPlanResult;
import leat.calc.zoning.ZoneReviewResult;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Finding;
import leat.model.finding.Ledger;
import leat.model.finding.Severity;
import leat.model.finding.Subject;
import leat.model.id.Id;
import leat.model.id.NaturalOrder;
import leat.model.plan.Site;
import leat.model.plan.Yard;

/** Every result for one site, computed together. */
public record Assessment(
        Site site,
        SupplyResult supply,
        HydraulicsResult hydraulics,
        SizeReviewResult sizes,
        ZoneReviewResult zoning,
        CoverageResult coverage,
        TrenchReviewResult trenching,
        WiringResult wiring,
        DiggingResult digging,
        StakingResult staking,
        PhasingResult phasing,
        WorkPlanResult workPlan,
        TakeoffResult takeoff,
        BudgetResult budget,
        ScheduleResult schedule) {

    private static final Comparator<Finding> WORST_FIRST = Comparator.comparing(Finding::severity)
            .thenComparing(finding -> finding.rule().id())
            .thenComparing(finding -> finding.subject().toString(), NaturalOrder::compare);

    public Yard yard() {
        return site.yard();
    }

    /** All findings: breaches first, then by rule, then by subject. */
    public List<Finding> findings() {
        return Stream.of(
                        supply.findings(),
                        hydraulics.findings(),
                        sizes.findings(),
                        zoning.findings(),
                        coverage.findings(),
                        trenching.findings(),
                        wiring.findings(),
                        schedule.findings(),
                        digging.findings(),
                        staking.findings(),
                        phasing.findings())
                .flatMap(List::stream)
                .sorted(WORST_FIRST)
                .toList();
    }

    public boolean hasBreach() {
        return findings().stream().anyMatch(finding -> finding.severity() == Severity.BREACH);
    }

    /** The findings about that thing, any of its fields included. */
    public List<Finding> findingsOf(Id id) {
        return findings().stream()
                .filter(finding -> finding.subject() instanceof Subject.Thing thing
                        && thing.id().equals(id))
                .toList();
    }

    /**
     * How a figure came about, computed now by the same kernel; its last line equals the figure to the last bit.
     *
     * @param figure one of {@link #figuresOf}, such as {@code pressure}
     * @throws InvalidValueException if the thing has no such figure
     */
    public Ledger why(Id id, String figure) {
        return new Answers(this).of(id, figure.strip());
    }

    /**
     * The same by name, alone or after the kind ({@code circuit garden}): of the first thing of that name that has such a
     * figure, or of the stake that is lettered so. Of
     * {@code materials}, {@code budget}, {@code digging} and {@code watering} it tells what belongs to the whole yard:
     * {@code why("materials", "tee 1 in")}, {@code why("budget", "tax")}.
     *
     * @throws InvalidValueException if nothing is called so, or it has no such figure; the message says which it has
     */
    public Ledger why(String name, String figure) {
        return new Answers(this).of(name, figure.strip());
    }

    /** The names of all figures that can be asked of what is called so; words in capitals stand for what follows. */
    public List<String> figuresOf(String name) {
        return new Answers(this).figuresOf(name);
    }

    /** The same by kind of thing, and then by topic of the whole yard. */
    public static Map<String, List<String>> figures() {
        return FigureNames.everyKind();
    }

    /** Conduits and cables lie as deep as the electrical code asks. */
    static DiggingParameters digging(WiringResult wiring) {
        return DiggingParameters.defaults().withCovers(wiring.covers());
    }

    static ScheduleParameters scheduling(
            CoverageResult coverage, HydraulicsResult hydraulics, ZoneReviewResult zoning) {
        return ScheduleParameters.defaults()
                .withCoverage(coverage)
                .withHydraulics(hydraulics)
                .withZoning(zoning);
    }
}
