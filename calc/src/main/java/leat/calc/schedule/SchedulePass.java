package leat.calc.schedule;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.schedule.internal.WeekDays;
import leat.model.finding.Finding;
import leat.model.finding.Status;
import leat.model.id.ZoneId;
import leat.model.plan.Site;
import leat.model.quantity.TimeSpan;
import leat.model.quantity.WaterVolume;
import leat.model.water.Climate;
import leat.model.water.Zone;

/** One pass over a yard: grounds, months, the peak week, findings. */
final class SchedulePass {

    private final Site site;
    private final ScheduleParameters parameters;
    private final ScheduleFindings findings;
    private final ValveOrder order;
    private final WeekSetting week;
    private final List<ZoneGround> grounds = new ArrayList<>();

    SchedulePass(Site site, ScheduleParameters parameters) {
        this.site = site;
        this.parameters = parameters;
        findings = new ScheduleFindings(site);
        order = new ValveOrder(site.yard().water());
        week = new WeekSetting(site.yard().watering(), order, parameters.surfaceStorage());
    }

    ScheduleResult result() {
        Optional<Climate> climate = climate(site);
        if (climate.isEmpty()) {
            return ScheduleResult.without(Status.COMPLETE, findings.withoutClimate());
        }
        ZoneGrounds finder = new ZoneGrounds(site, parameters);
        for (Zone zone : site.yard().water().zones()) {
            finder.of(zone).ifPresentOrElse(grounds::add, () -> findings.noGround(zone));
        }
        return result(climate.get());
    }

    static Optional<Climate> climate(Site site) {
        return site.yard()
                .watering()
                .climate()
                .or(() -> site.yard()
                        .watering()
                        .station()
                        .map(key -> site.catalog().watering().station(key).climate()));
    }

    private ScheduleResult result(Climate climate) {
        List<ReferenceMonth> year = ReferenceYear.of(climate);
        List<List<ZoneMonth>> wet =
                year.stream().map(month -> month(climate, month, true)).toList();
        List<List<ZoneMonth>> dry =
                year.stream().map(month -> month(climate, month, false)).toList();
        int peak = busiest(dry);
        SortedMap<ZoneId, ZoneSchedule> zones = new TreeMap<>();
        for (int i = 0; i < grounds.size(); i++) {
            int zone = i;
            List<ZoneMonth> months = wet.stream().map(all -> all.get(zone)).toList();
            zones.put(
                    grounds.get(i).zone(),
                    new ZoneSchedule(grounds.get(i), months, dry.get(peak).get(i)));
        }
        List<YardMonth> months = new ArrayList<>();
        for (ReferenceMonth month : year) {
            months.add(total(month, wet.get(month.month().ordinal())));
        }
        Optional<PeakWeek> peakWeek = peakWeek(year.get(peak).month(), dry.get(peak));
        List<Finding> found = findings.of(climate, year, zones, peakWeek);
        return new ScheduleResult(Status.COMPLETE, Optional.of(climate.place()), zones, months, peakWeek, found);
    }

    /** The first of the months whose weeks take most. */
    private static int busiest(List<List<ZoneMonth>> months) {
        int busiest = 0;
        for (int i = 1; i < months.size(); i++) {
            busiest = weekM3(months.get(i)) > weekM3(months.get(busiest)) ? i : busiest;
        }
        return busiest;
    }

    private static double weekM3(List<ZoneMonth> month) {
        // A month's volume counts its days; the week is the same share of all months.
        return month.stream()
                .mapToDouble(one -> one.volume().si() / one.month().length(false))
                .sum();
    }

    /** Parallel to the grounds. */
    private List<ZoneMonth> month(Climate climate, ReferenceMonth reference, boolean withRain) {
        WaterNeeds needs = new WaterNeeds(site, climate);
        List<WaterBalance> balances = grounds.stream()
                .map(ground -> needs.of(ground, reference, withRain))
                .toList();
        boolean off = isOff(climate, reference.month());
        SortedMap<ZoneId, ZoneSetting> settings = off ? new TreeMap<>() : week.of(grounds, balances);
        List<ZoneMonth> months = new ArrayList<>();
        for (int i = 0; i < grounds.size(); i++) {
            ZoneGround ground = grounds.get(i);
            ZoneSetting setting = settings.getOrDefault(ground.zone(), ZoneSetting.OFF);
            WaterVolume volume = volume(ground, setting, reference.month());
            months.add(new ZoneMonth(reference.month(), balances.get(i), setting, volume));
        }
        return months;
    }

    /** Whether the user wants none then, or nothing grows and pipes may freeze. */
    private boolean isOff(Climate climate, Month month) {
        return site.yard().watering().off().contains(month) || !CropCoefficients.grows(climate, month);
    }

    static WaterVolume volume(ZoneGround ground, ZoneSetting setting, Month month) {
        double weeks = month.length(false) / (double) WeekDays.DAYS;
        return new WaterVolume(ground.flow().si() * setting.week().si() * weeks);
    }

    private static YardMonth total(ReferenceMonth reference, List<ZoneMonth> zones) {
        double weekS = 0;
        double volumeM3 = 0;
        for (ZoneMonth zone : zones) {
            weekS += zone.setting().week().si();
            volumeM3 += zone.volume().si();
        }
        return new YardMonth(reference, new TimeSpan(weekS), new WaterVolume(volumeM3));
    }

    private Optional<PeakWeek> peakWeek(Month month, List<ZoneMonth> zones) {
        SortedMap<ZoneId, ZoneSetting> settings = new TreeMap<>();
        for (int i = 0; i < grounds.size(); i++) {
            settings.put(grounds.get(i).zone(), zones.get(i).setting());
        }
        boolean runs = settings.values().stream().anyMatch(ZoneSetting::runs);
        return runs
                ? Optional.of(new PeakWeekPlan(site, parameters, order, grounds, settings).of(month))
                : Optional.empty();
    }
}
