package leat.calc.assess;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import leat.calc.budget.Budget;
import leat.calc.budget.BudgetParameters;
import leat.calc.digging.Digging;
import leat.calc.hydraulics.Hydraulics;
import leat.calc.hydraulics.HydraulicsParameters;
import leat.calc.schedule.Schedule;
import leat.calc.schedule.ScheduleParameters;
import leat.calc.staking.Stake;
import leat.calc.staking.Staking;
import leat.calc.staking.StakingParameters;
import leat.calc.wiring.WiringReview;
import leat.calc.wiring.WiringReviewParameters;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.finding.Ledger;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.Id;
import leat.model.id.LoadId;
import leat.model.id.SegmentId;
import leat.model.id.SurfaceId;
import leat.model.id.ZoneId;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.power.Cable;
import leat.model.power.Circuit;
import leat.model.power.Conduit;
import leat.model.power.Load;
import leat.model.site.Surface;
import leat.model.trench.TrenchSegment;
import leat.model.water.Head;
import leat.model.water.HoseBib;
import leat.model.water.PipeRun;
import leat.model.water.Zone;

/** Finds the calculation that explains a figure, and lets it do so. */
final class Answers {

    private final Assessment assessment;
    private final Site site;

    Answers(Assessment assessment) {
        this.assessment = assessment;
        site = assessment.site();
    }

    Ledger of(Id id, String figure) {
        if (!FigureNames.has(id.kind(), figure)) {
            throw FigureNames.refused(id, figure);
        }
        if (id instanceof SurfaceId surface) {
            return assessment.coverage().why(surface, figure);
        }
        if (id instanceof SegmentId trench) {
            return Digging.why(site, Assessment.digging(assessment.wiring()), trench, figure);
        }
        if (id instanceof ZoneId zone && !figure.equals("flow")) {
            return Schedule.why(site, scheduling(), zone, figure);
        }
        boolean wired =
                id instanceof LoadId || id instanceof CircuitId || id instanceof CableId || id instanceof ConduitId;
        return wired
                ? WiringReview.why(site, WiringReviewParameters.defaults(), id, figure)
                : Hydraulics.why(site, HydraulicsParameters.defaults(), id, figure);
    }

    private ScheduleParameters scheduling() {
        return Assessment.scheduling(assessment.coverage(), assessment.hydraulics(), assessment.zoning());
    }

    Ledger of(String name, String figure) {
        if (FigureNames.TOPICS.contains(name)) {
            return ofYard(name, figure);
        }
        List<Id> called = called(name);
        for (Id id : called) {
            if (FigureNames.has(id.kind(), figure)) {
                return of(id, figure);
            }
        }
        if (FigureNames.has(FigureNames.STAKE, figure) && isStake(name)) {
            return Staking.why(assessment.staking(), StakingParameters.defaults(), name, figure);
        }
        List<String> figures = figuresOf(name);
        throw FigureNames.refused(called.size() == 1 ? called.get(0).title() : name, figure, figures);
    }

    private Ledger ofYard(String topic, String figure) {
        return switch (topic) {
            case FigureNames.MATERIALS -> assessment.takeoff().why(figure);
            case FigureNames.BUDGET -> Budget.why(site, BudgetParameters.of(assessment.takeoff()), figure);
            case FigureNames.DIGGING -> Digging.why(site, Assessment.digging(assessment.wiring()), figure);
            case FigureNames.WATERING -> Schedule.why(site, scheduling(), figure);
            default -> throw new AssertionError(topic);
        };
    }

    List<String> figuresOf(String name) {
        if (FigureNames.TOPICS.contains(name)) {
            return FigureNames.of(name);
        }
        Set<String> figures = new LinkedHashSet<>();
        called(name).forEach(id -> figures.addAll(FigureNames.of(id.kind())));
        if (isStake(name)) {
            figures.addAll(FigureNames.of(FigureNames.STAKE));
        }
        if (figures.isEmpty()) {
            throw unknown(name);
        }
        return List.copyOf(figures);
    }

    private List<Id> called(String name) {
        return explained(site.yard())
                .filter(id -> id.name().equals(name) || name.equals(id.kind() + " " + id.name()))
                .toList();
    }

    private boolean isStake(String label) {
        return assessment.staking().stakes().stream().map(Stake::label).anyMatch(label::equals);
    }

    /** All that has figures; of two things with the same name the first one answers. */
    private static Stream<Id> explained(Yard yard) {
        return Stream.<Stream<? extends Id>>of(
                        yard.water().heads().stream().map(Head::id),
                        yard.water().bibs().stream().map(HoseBib::id),
                        yard.water().zones().stream().map(Zone::id),
                        yard.water().pipes().map(PipeRun::id),
                        yard.terrain().surfaces().stream().map(Surface::id),
                        yard.trenches().stream().map(TrenchSegment::id),
                        yard.power().loads().map(Load::id),
                        yard.power().circuits().stream().map(Circuit::id),
                        yard.power().cables().map(Cable::id),
                        yard.power().conduits().stream().map(Conduit::id))
                .flatMap(ids -> ids);
    }

    private InvalidValueException unknown(String name) {
        List<String> names =
                new ArrayList<>(explained(site.yard()).map(Id::name).toList());
        names.addAll(FigureNames.TOPICS);
        return new InvalidValueException(
                "why",
                "name",
                "'" + name + "'",
                "the name of a head, a hose bib, a zone, a pipe, a lawn or a bed, a trench, what is wired or a stake, or "
                        + String.join(", ", FigureNames.TOPICS) + Nearest.hint(name, names));
    }
}
