package leat.calc.workplan;

import java.util.Collection;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import leat.calc.digging.TrenchDig;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.id.SegmentId;
import leat.model.plan.Site;
import leat.model.quantity.Length;
import leat.model.quantity.Quantity;
import leat.model.quantity.Volume;
import leat.model.quantity.WaterVolume;
import leat.model.water.PipeRun;

/** The figure that goes with a step: how long a way to dig, how much earth or water. */
final class StepFigures {

    private final Site site;
    private final WorkPlanParameters parameters;

    StepFigures(Site site, WorkPlanParameters parameters) {
        this.site = site;
        this.parameters = parameters;
    }

    Optional<Quantity> of(WorkKind kind, Collection<Id> things) {
        return switch (kind) {
            case NOTICE -> Optional.of(parameters.notice());
            case DIG_BY_HAND, DIG_MAIN, DIG ->
                Optional.of(new Length(sum(things, dig -> dig.onGround().metres())));
            case BED -> Optional.of(new Volume(sum(things, dig -> dig.bedding().cubicMetres())));
            case BACKFILL ->
                Optional.of(new Volume(sum(things, dig -> dig.backfill().cubicMetres())));
            case TEST_MAIN -> Optional.of(new WaterVolume(waterM3(things)));
            default -> Optional.empty();
        };
    }

    private double sum(Collection<Id> things, ToDoubleFunction<TrenchDig> figure) {
        return things.stream()
                .filter(SegmentId.class::isInstance)
                .flatMap(id -> parameters.digging().trench((SegmentId) id).stream())
                .mapToDouble(figure)
                .sum();
    }

    /** What the pipes hold; those without a size are left out. */
    private double waterM3(Collection<Id> things) {
        Stream<PipeRun> runs = things.stream()
                .filter(PipeId.class::isInstance)
                .flatMap(id -> site.yard().water().pipe((PipeId) id).stream());
        return runs.mapToDouble(run -> run.tradeSize()
                        .map(size -> site.catalog().pipe(size).bore().metres())
                        .map(boreM -> Math.PI * boreM * boreM / 4 * run.route().lengthM())
                        .orElse(0.0))
                .sum();
    }
}
