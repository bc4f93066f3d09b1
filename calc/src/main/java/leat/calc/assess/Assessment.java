package leat.calc.assess;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leat.calc.budget.BudgetResult;
import leat.calc.coverage.CoverageResult;
import leat.calc.digging.Digging;
import leat.calc.digging.DiggingParameters;
import leat.calc.digging.DiggingResult;
import leat.calc.hydraulics.Hydraulics;
import leat.calc.hydraulics.HydraulicsParameters;
import leat.calc.hydraulics.HydraulicsResult;
import leat.calc.phasing.PhasingResult;
import leat.calc.schedule.Schedule;
import leat.calc.schedule.ScheduleParameters;
import leat.calc.schedule.ScheduleResult;
import leat.calc.sizing.SizeReviewResult;
import leat.calc.staking.StakingResult;
import leat.calc.supply.SupplyResult;
import leat.calc.takeoff.TakeoffResult;
import leat.calc.trenching.TrenchReviewResult;
import leat.calc.wiring.WiringResult;
import leat.calc.wiring.WiringReview;
import leat.calc.wiring.WiringReviewParameters;
import leat.calc.workplan.WorkPlanResult;
import leat.calc.zoning.ZoneReviewResult;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.finding.Finding;
import leat.model.finding.Ledger;
import leat.model.finding.Severity;
import leat.model.finding.Subject;
import leat.model.id.Id;
import leat.model.id.NaturalOrder;
import leat.model.id.SegmentId;
import leat.model.id.ZoneId;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.trench.TrenchSegment;
import leat.model.water.Head;
import leat.model.water.HoseBib;
import leat.model.water.Zone;

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

    private static final String MATERIALS = "materials";

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
     * @param figure {@code pressure} or {@code flow} of a head, {@code pressure} of a bib, {@code minutes July} or
     *     {@code minutes peak} of a zone, {@code length}, {@code width}, {@code volume}, {@code loose}, {@code bedding} or
     *     {@code backfill} of a trench; {@code current}, {@code drop}, {@code voltage}, {@code ampacity} or {@code fill} of a
     *     circuit, a cable, a load or a conduit, {@code load} of a transformer
     * @throws InvalidValueException if the thing has no such figure
     */
    public Ledger why(Id id, String figure) {
        if (WiredThings.has(id)) {
            return WiringReview.why(site, WiringReviewParameters.defaults(), id, figure);
        }
        if (id instanceof SegmentId trench) {
            return Digging.why(site, digging(wiring), trench, figure);
        }
        if (id instanceof ZoneId zone) {
            return Schedule.why(site, scheduling(coverage, hydraulics, zoning), zone, figure);
        }
        return Hydraulics.why(site, HydraulicsParameters.defaults(), id, figure);
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

    /**
     * The same by name: of the first thing of that name that has figures, heads before hose bibs, zones and trenches, or of
     * what is wired. Of {@code materials} it tells where a material goes, place by place: {@code why("materials", "tee 1 in")}.
     */
    public Ledger why(String name, String figure) {
        if (name.equals(MATERIALS)) {
            return takeoff.why(figure);
        }
        Optional<Id> wired = WiredThings.with(yard().power(), figure)
                .filter(id -> id.name().equals(name))
                .findFirst();
        if (wired.isPresent()) {
            return why(wired.get(), figure);
        }
        Optional<? extends Id> found =
                explained().filter(id -> id.name().equals(name)).findFirst();
        return why(found.orElseThrow(() -> unknown(name)), figure);
    }

    /** All that has figures that can be explained. */
    private Stream<? extends Id> explained() {
        return Stream.<Stream<? extends Id>>of(
                        yard().water().heads().stream().map(Head::id),
                        yard().water().bibs().stream().map(HoseBib::id),
                        yard().water().zones().stream().map(Zone::id),
                        yard().trenches().stream().map(TrenchSegment::id))
                .flatMap(ids -> ids);
    }

    private InvalidValueException unknown(String name) {
        List<String> names = explained().map(Id::name).toList();
        String nearest =
                Nearest.to(name, names).map(near -> "; perhaps '" + near + "'").orElse("");
        return new InvalidValueException(
                "why",
                "name",
                "'" + name + "'",
                "the name of a head, a hose bib, a zone or a trench, or " + MATERIALS + nearest);
    }
}
