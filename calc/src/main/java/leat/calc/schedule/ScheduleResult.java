package leat.calc.schedule;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.Require;
import leat.model.finding.Finding;
import leat.model.finding.Status;
import leat.model.id.ZoneId;
import leat.model.quantity.WaterVolume;

/**
 * When and how long each zone runs.
 *
 * @param place  of the climate; empty while no climate is stated, and then there is nothing but findings
 * @param zones  each zone that waters a lawn or a bed
 * @param months of the whole yard, from January on; empty without a climate
 * @param peak   empty while no zone uses water
 */
public record ScheduleResult(
        Status status,
        Optional<String> place,
        SortedMap<ZoneId, ZoneSchedule> zones,
        List<YardMonth> months,
        Optional<PeakWeek> peak,
        List<Finding> findings) {

    public ScheduleResult {
        Require.present("schedule result", "status", status);
        Require.present("schedule result", "place", place);
        zones = Collections.unmodifiableSortedMap(new TreeMap<>(zones));
        months = Require.entries("schedule result", "months", months);
        Require.present("schedule result", "peak", peak);
        findings = List.copyOf(findings);
    }

    static ScheduleResult without(Status status, List<Finding> findings) {
        return new ScheduleResult(
                status, Optional.empty(), Collections.emptySortedMap(), List.of(), Optional.empty(), findings);
    }

    /** Water of the whole year. */
    public WaterVolume year() {
        return new WaterVolume(
                months.stream().mapToDouble(month -> month.volume().si()).sum());
    }
}
