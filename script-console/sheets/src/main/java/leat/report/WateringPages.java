package leat.report;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leat.calc.schedule.PeakWeek;
import leat.calc.schedule.ScheduleResult;
import leat.calc.schedule.ValveRun;
import leat.calc.schedule.WaterBalance;
import leat.calc.schedule.YardMonth;
import leat.calc.schedule.ZoneMonth;
import leat.calc.schedule.ZoneSchedule;
import leat.calc.schedule.ZoneSetting;
import leat.model.quantity.Dimension;
import leat.model.quantity.Length;
import leat.model.quantity.TimeSpan;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.WaterVolume;
import leat.model.water.ClimateMonth;
import leat.model.water.WateringHours;

/** The watering schedule as tables: how each figure came about, what to set month by month, and the hours of the peak week. */
final class WateringPages {

    private static final int DAY_MINUTES = 1_440;

    private final ScheduleResult schedule;
    private final UnitSystem units;

    WateringPages(ScheduleResult schedule, UnitSystem units) {
        this.schedule = schedule;
        this.units = units;
    }

    /** The tables as files: {@code watering.csv}, {@code watering-calendar.csv}, {@code watering-peak-week.csv}; none without a climate. */
    SortedMap<String, byte[]> files() {
        SortedMap<String, byte[]> files = new TreeMap<>();
        if (schedule.place().isPresent()) {
            files.put("watering.csv", Csv.write(needs()));
            files.put("watering-calendar.csv", Csv.write(calendar()));
            files.put("watering-peak-week.csv", Csv.write(peakWeek()));
        }
        return files;
    }

    /** A row for each zone and month: from the use of the planting to the water of the month. Depths a day are averages. */
    Table needs() {
        List<String> columns = List.of(
                "zone",
                "ground",
                "planting",
                "month",
                depthHead("reference use a day"),
                "crop coefficient",
                depthHead("use a day"),
                depthHead("usable rain of the month"),
                depthHead("net need a day"),
                depthHead("gross depth a day"),
                depthHead("held by the soil"),
                "longest interval, days",
                "days a week",
                "cycles",
                "cycle, min",
                "soak, min",
                "week, min",
                volumeHead("water of the month"));
        List<List<Cell>> rows = new ArrayList<>();
        for (ZoneSchedule zone : schedule.zones().values()) {
            zone.months().forEach(month -> rows.add(needs(zone, month)));
        }
        return new Table(columns, rows);
    }

    private List<Cell> needs(ZoneSchedule zone, ZoneMonth month) {
        WaterBalance balance = month.balance();
        ZoneSetting setting = month.setting();
        return List.of(
                Cell.text(zone.ground().zone().name()),
                Cell.text(zone.ground().ground().name()),
                Cell.text(zone.ground().planting()),
                Cell.text(ClimateMonth.name(month.month())),
                depth(balance.reference()),
                new Cell(decimals(balance.coefficient().value(), 2), true),
                depth(balance.use()),
                depth(balance.rain()),
                depth(balance.net()),
                depth(balance.gross()),
                depth(balance.held()),
                Cell.figure(balance.interval(), units),
                Cell.count(setting.days().size()),
                Cell.figure(setting.cycles(), units),
                minutes(setting.cycle()),
                minutes(setting.soak()),
                minutes(setting.week()),
                volume(month.volume()));
    }

    /** A row for each month, a column for each zone: on how many days how many cycles of how many minutes. */
    Table calendar() {
        List<String> columns = new ArrayList<>(List.of("month"));
        schedule.zones().keySet().forEach(zone -> columns.add(zone.name()));
        columns.addAll(List.of("all zones in a week, min", volumeHead("water of the month")));
        List<List<Cell>> rows = new ArrayList<>();
        for (YardMonth month : schedule.months()) {
            Month name = month.reference().month();
            List<Cell> row = new ArrayList<>(List.of(Cell.text(ClimateMonth.name(name))));
            schedule.zones()
                    .values()
                    .forEach(zone -> row.add(Cell.text(setting(zone.month(name).setting()))));
            row.add(minutes(month.week()));
            row.add(volume(month.volume()));
            rows.add(row);
        }
        return new Table(columns, rows);
    }

    /** Such as {@code Mon Wed Fri: 2 × 13 min, soak 8 min}. */
    private static String setting(ZoneSetting setting) {
        if (!setting.runs()) {
            return "off";
        }
        String cycle = decimals(setting.cycle().inMinutes(), 0) + " min";
        boolean one = setting.cycles().value() == 1;
        String cycles = one ? cycle : decimals(setting.cycles().value(), 0) + " × " + cycle;
        String soak = one ? "" : ", soak " + decimals(setting.soak().inMinutes(), 0) + " min";
        return days(setting.days()) + ": " + cycles + soak;
    }

    private static String days(SortedSet<DayOfWeek> days) {
        return days.stream().map(WateringPages::day).collect(Collectors.joining(" "));
    }

    private static String day(DayOfWeek day) {
        return day.name().charAt(0) + day.name().substring(1, 3).toLowerCase(Locale.ROOT);
    }

    /** Every opening of a valve in the peak week, in order of time. */
    Table peakWeek() {
        List<List<Cell>> rows = new ArrayList<>();
        schedule.peak().map(PeakWeek::runs).orElse(List.of()).forEach(run -> rows.add(run(run)));
        return new Table(List.of("day", "start", "end", "zone", "cycle", "length, min"), rows);
    }

    private List<Cell> run(ValveRun run) {
        int start = (int) Math.rint(run.start().inMinutes());
        int end = start + (int) Math.rint(run.length().inMinutes());
        return List.of(
                Cell.text(day(run.day().plus(start / DAY_MINUTES))),
                Cell.text(WateringHours.text(start % DAY_MINUTES)),
                Cell.text(WateringHours.text(end % DAY_MINUTES)),
                Cell.text(run.zone().name()),
                Cell.figure(run.cycle(), units),
                minutes(run.length()));
    }

    /** What the peak week comes to, in a sentence; empty without one. */
    String summary() {
        return schedule.peak()
                .map(peak -> "The week that asks for most is one without rain in " + ClimateMonth.name(peak.month())
                        + ": on its busiest day the last valve closes " + span(peak.needed())
                        + " after the first one opens; " + span(peak.allowed()) + " are allowed.")
                .orElse("");
    }

    private static String span(TimeSpan span) {
        long minutes = Math.round(span.inMinutes());
        return minutes / 60 + " h " + minutes % 60 + " min";
    }

    private boolean us() {
        return units == UnitSystem.US;
    }

    private String depthHead(String name) {
        return name + (us() ? ", in" : ", mm");
    }

    private Cell depth(Length depth) {
        return new Cell(us() ? decimals(depth.inInches(), 3) : decimals(depth.inMillimetres(), 2), true);
    }

    private String volumeHead(String name) {
        return Table.head(name, Dimension.WATER, units);
    }

    private Cell volume(WaterVolume volume) {
        return Cell.figure(volume, units);
    }

    private Cell minutes(TimeSpan span) {
        return Cell.figure(span, units);
    }

    private static String decimals(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
