package leat.calc.schedule;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.fault.UnfinishedException;
import leat.model.finding.Citation;
import leat.model.finding.Ledger;
import leat.model.finding.Standing;
import leat.model.finding.Step;
import leat.model.finding.Subject;
import leat.model.quantity.Quantity;
import leat.model.quantity.WaterVolume;
import leat.model.water.ClimateMonth;

/** Tells how the watering of the whole yard adds up: minutes and water of a month, water of the year, hours of the peak week. */
final class YardWaterLedger {

    static final List<String> FIGURES = List.of("minutes", "volume", "volume year", "volume peak", "hours peak");

    private static final Citation SUM = new Citation("sum of the lines above", Standing.RECOMPUTED);
    private static final Citation QUEUE = new Citation("docs/theory/watering.md", Standing.RECOMPUTED);

    private final ScheduleResult result;
    private final List<Step> steps = new ArrayList<>();

    YardWaterLedger(ScheduleResult result) {
        this.result = result;
    }

    Ledger of(String figure) {
        if (result.place().isEmpty()) {
            throw new UnfinishedException(List.of("there is no watering schedule: no climate is stated"));
        }
        String[] words = figure.strip().split("\\s+");
        String when = words.length == 2 ? words[1] : "";
        Optional<Month> month = ScheduleLedger.month(when);
        if (month.isPresent() && words[0].equals("minutes")) {
            addMinutes(month.get());
        } else if (month.isPresent() && words[0].equals("volume")) {
            addVolume(month.get());
        } else if (figure.equals("volume year")) {
            addYear();
        } else if (figure.equals("volume peak")) {
            addPeakVolume();
        } else if (figure.equals("hours peak")) {
            addHours();
        } else {
            throw new InvalidValueException(
                    "why",
                    "figure of watering",
                    "'" + figure + "'",
                    "minutes or volume and then a month, volume year, volume peak or hours peak"
                            + Nearest.hint(figure, FIGURES));
        }
        return new Ledger(Subject.yard(), "watering, " + figure, steps);
    }

    private void addMinutes(Month month) {
        result.zones()
                .forEach((zone, schedule) -> step(
                        zone.title() + ", minutes a week",
                        "days · cycles · cycle",
                        schedule.month(month).setting().week(),
                        QUEUE));
        step(
                "all zones in a week of " + ClimateMonth.name(month),
                "sum",
                row(month).week(),
                SUM);
    }

    private void addVolume(Month month) {
        result.zones()
                .forEach((zone, schedule) -> step(
                        zone.title() + ", water of the month",
                        "Q · minutes · days of the month / 7",
                        schedule.month(month).volume(),
                        QUEUE));
        step("water of " + ClimateMonth.name(month), "sum", row(month).volume(), SUM);
    }

    private YardMonth row(Month month) {
        return result.months().get(month.ordinal());
    }

    private void addYear() {
        for (YardMonth month : result.months()) {
            step(ClimateMonth.name(month.reference().month()), "sum of the zones", month.volume(), QUEUE);
        }
        step("water of the whole year", "sum", result.year(), SUM);
    }

    private PeakWeek peak() {
        return result.peak().orElseThrow(() -> new UnfinishedException(List.of("no zone uses water in any week")));
    }

    private void addPeakVolume() {
        PeakWeek peak = peak();
        result.zones()
                .forEach((zone, schedule) -> step(
                        zone.title() + ", a week without rain in " + ClimateMonth.name(peak.month()),
                        "Q · minutes",
                        new WaterVolume(schedule.ground().flow().si()
                                * schedule.peak().setting().week().si()),
                        QUEUE));
        step("water of that week", "sum", peak.volume(), SUM);
    }

    /** Valves of one source open one after the other; while one soaks another may run. */
    private void addHours() {
        PeakWeek peak = peak();
        for (ValveRun run : peak.runs()) {
            if (run.day() == peak.busiest()) {
                step(
                        run.zone().title() + ", cycle " + (int) run.cycle().value() + ", opens at " + clock(run),
                        "as soon as its source is free and its soak is over",
                        run.length(),
                        QUEUE);
            }
        }
        step(
                "from the first opening to the last closing, "
                        + peak.busiest().getDisplayName(TextStyle.FULL, Locale.ENGLISH),
                "last opening + its length - first opening",
                peak.needed(),
                QUEUE,
                new Step.Input("hours allowed", peak.allowed()));
    }

    private static String clock(ValveRun run) {
        int minutes = (int) Math.rint(run.start().inMinutes()) % (24 * 60);
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }

    private void step(String text, String formula, Quantity value, Citation citation, Step.Input... inputs) {
        steps.add(new Step(text, formula, List.of(inputs), value, citation));
    }
}
