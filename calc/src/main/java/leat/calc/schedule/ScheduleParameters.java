package leat.calc.schedule;

import java.util.Collections;
import java.util.List;
import leat.calc.coverage.CoverageResult;
import leat.calc.hydraulics.HydraulicsResult;
import leat.calc.zoning.ZoneReviewResult;
import leat.model.fault.Require;
import leat.model.finding.Status;
import leat.model.quantity.Length;

/**
 * What the schedule goes by besides the yard.
 *
 * @param coverage       how evenly and how fast water falls on each surface; one that is not there is taken by the flow of its
 *     heads, its area and the usual evenness of their kind
 * @param hydraulics     what zones and heads draw; those that are not there are taken at their reference pressure
 * @param zoning         the flow that is safe for each zone
 * @param surfaceStorage water that may stand in the hollows of the ground before it runs off, 0 or more; default 0.15 in
 *     (3.8 mm), common practice, no source. Twice as much makes cycles twice as long
 */
public record ScheduleParameters(
        CoverageResult coverage, HydraulicsResult hydraulics, ZoneReviewResult zoning, Length surfaceStorage) {

    public ScheduleParameters {
        Require.present("schedule", "coverage", coverage);
        Require.present("schedule", "hydraulics", hydraulics);
        Require.present("schedule", "zoning", zoning);
        Require.moreThan("schedule", "surfaceStorage", surfaceStorage, Length.ZERO);
    }

    /** With no result of any other calculation. */
    public static ScheduleParameters defaults() {
        return new ScheduleParameters(
                new CoverageResult(
                        Status.COMPLETE, Collections.emptySortedMap(), Collections.emptySortedMap(), List.of()),
                new HydraulicsResult(
                        Status.COMPLETE,
                        Collections.emptySortedMap(),
                        Collections.emptySortedMap(),
                        List.of(),
                        List.of()),
                new ZoneReviewResult(Status.COMPLETE, Collections.emptySortedMap(), List.of()),
                Length.inches(0.15));
    }

    public ScheduleParameters withCoverage(CoverageResult result) {
        return new ScheduleParameters(result, hydraulics, zoning, surfaceStorage);
    }

    public ScheduleParameters withHydraulics(HydraulicsResult result) {
        return new ScheduleParameters(coverage, result, zoning, surfaceStorage);
    }

    public ScheduleParameters withZoning(ZoneReviewResult result) {
        return new ScheduleParameters(coverage, hydraulics, result, surfaceStorage);
    }

    public ScheduleParameters withSurfaceStorage(Length depth) {
        return new ScheduleParameters(coverage, hydraulics, zoning, depth);
    }
}
