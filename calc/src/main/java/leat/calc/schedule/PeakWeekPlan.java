package leat.calc.schedule;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import leat.calc.schedule.internal.ValveQueue;
import leat.model.id.ZoneId;
import leat.model.plan.Site;
import leat.model.quantity.Count;
import leat.model.quantity.Flow;
import leat.model.quantity.TimeSpan;
import leat.model.quantity.WaterVolume;
import leat.model.water.WateringHours;

/** Lays the openings of the valves into the hours of each day, source by source. */
final class PeakWeekPlan {

    private static final Comparator<ValveRun> IN_ORDER =
            Comparator.comparing(ValveRun::day).thenComparing(ValveRun::start).thenComparing(ValveRun::zone);

    private final Site site;
    private final ScheduleParameters parameters;
    private final ValveOrder order;
    private final List<ZoneGround> grounds;
    private final SortedMap<ZoneId, ZoneSetting> settings;
    private final List<ValveRun> runs = new ArrayList<>();
    private final int[] endMinute = new int[DayOfWeek.values().length];

    PeakWeekPlan(
            Site site,
            ScheduleParameters parameters,
            ValveOrder order,
            List<ZoneGround> grounds,
            SortedMap<ZoneId, ZoneSetting> settings) {
        this.site = site;
        this.parameters = parameters;
        this.order = order;
        this.grounds = grounds;
        this.settings = settings;
    }

    PeakWeek of(Month month) {
        WateringHours hours = site.yard().watering().hours().orElse(WateringHours.WHOLE_DAY);
        for (String queue : order.queues(grounds)) {
            List<ZoneGround> waiting = grounds.stream()
                    .filter(ground -> order.queueOf(ground.zone()).equals(queue))
                    .toList();
            for (DayOfWeek day : DayOfWeek.values()) {
                lay(day, hours.fromMinute(), waiting);
            }
        }
        runs.sort(IN_ORDER);
        DayOfWeek busiest = busiest();
        double volumeM3 = grounds.stream().mapToDouble(this::volumeM3).sum();
        return new PeakWeek(
                month,
                runs,
                busiest,
                TimeSpan.minutes(endMinute[busiest.ordinal()]),
                allowed(hours),
                least(),
                new WaterVolume(volumeM3));
    }

    /** The hours that are stated, else those of the rule. */
    private TimeSpan allowed(WateringHours hours) {
        return site.yard().watering().hours().isPresent()
                ? TimeSpan.minutes(hours.lengthMinutes())
                : new TimeSpan(site.rules().get("watering.hours").limit().si());
    }

    private void lay(DayOfWeek day, int fromMinute, List<ZoneGround> waiting) {
        List<ZoneGround> today = waiting.stream()
                .filter(ground -> setting(ground).days().contains(day))
                .toList();
        ValveQueue queue = new ValveQueue(
                today.stream()
                        .mapToInt(ground -> (int) setting(ground).cycles().value())
                        .toArray(),
                today.stream()
                        .mapToInt(ground -> minutes(setting(ground).cycle()))
                        .toArray(),
                today.stream()
                        .mapToInt(ground -> minutes(setting(ground).soak()))
                        .toArray());
        int[] opened = new int[today.size()];
        for (int i = 0; i < queue.openings(); i++) {
            ZoneGround ground = today.get(queue.zone(i));
            opened[queue.zone(i)]++;
            runs.add(new ValveRun(
                    day,
                    TimeSpan.minutes(fromMinute + queue.startMinute(i)),
                    ground.zone(),
                    Count.of(opened[queue.zone(i)]),
                    setting(ground).cycle()));
        }
        endMinute[day.ordinal()] = Math.max(endMinute[day.ordinal()], queue.endMinute());
    }

    private static int minutes(TimeSpan span) {
        return (int) Math.rint(span.inMinutes());
    }

    private ZoneSetting setting(ZoneGround ground) {
        return settings.getOrDefault(ground.zone(), ZoneSetting.OFF);
    }

    private double volumeM3(ZoneGround ground) {
        return ground.flow().si() * setting(ground).week().si();
    }

    private DayOfWeek busiest() {
        DayOfWeek busiest = DayOfWeek.MONDAY;
        for (DayOfWeek day : DayOfWeek.values()) {
            busiest = endMinute[day.ordinal()] > endMinute[busiest.ordinal()] ? day : busiest;
        }
        return busiest;
    }

    /** The busiest source's; where several have no known safe flow, what the others take. */
    private TimeSpan least() {
        long days = Arrays.stream(DayOfWeek.values())
                .filter(day -> site.yard().watering().mayRunOn(day))
                .count();
        double mostS = 0;
        for (String queue : order.queues(grounds)) {
            double aWeekS = grounds.stream()
                    .filter(ground -> order.queueOf(ground.zone()).equals(queue))
                    .mapToDouble(this::atSafeFlowS)
                    .sum();
            mostS = Math.max(mostS, aWeekS / days);
        }
        return new TimeSpan(mostS);
    }

    private double atSafeFlowS(ZoneGround ground) {
        return Optional.ofNullable(parameters.zoning().zones().get(ground.zone()))
                .flatMap(figures -> figures.safeFlow())
                .map(Flow::si)
                .filter(safeM3PerS -> safeM3PerS > 0)
                .map(safeM3PerS -> volumeM3(ground) / safeM3PerS)
                .orElse(0.0);
    }
}
