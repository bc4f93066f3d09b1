package leat.calc.schedule;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import leat.calc.schedule.internal.Application;
import leat.model.catalog.PlantKind;
import leat.model.fault.InvalidValueException;
import leat.model.fault.UnfinishedException;
import leat.model.finding.Citation;
import leat.model.finding.Ledger;
import leat.model.finding.Standing;
import leat.model.finding.Step;
import leat.model.finding.Subject;
import leat.model.id.ZoneId;
import leat.model.plan.Site;
import leat.model.quantity.Count;
import leat.model.quantity.Quantity;
import leat.model.quantity.Ratio;
import leat.model.quantity.TimeSpan;
import leat.model.water.ClimateMonth;
import leat.model.water.GrowingPlace;

/** Writes how a figure of the schedule came about, from the weather to the minutes. */
final class ScheduleLedger {

    private static final String PEAK = "peak";
    private static final List<String> FIGURES = List.of("minutes", "use", "volume");
    private static final Citation FAO = fao("chapter 4, equations 6 and 52");
    private static final Citation MULTIPLIER = new Citation(
            "Irrigation Association, Landscape Irrigation Scheduling and Water Management, 2005", Standing.FROM_MEMORY);
    private static final Citation SCS =
            new Citation("USDA Soil Conservation Service, Technical Release 21, 1970", Standing.FROM_MEMORY);
    private static final Citation ARITHMETIC = new Citation("arithmetic", Standing.RECOMPUTED);

    private final Site site;
    private final ScheduleParameters parameters;
    private final ScheduleResult result;

    ScheduleLedger(Site site, ScheduleParameters parameters, ScheduleResult result) {
        this.site = site;
        this.parameters = parameters;
        this.result = result;
    }

    private static Citation fao(String where) {
        return new Citation("FAO Irrigation and Drainage Paper 56, 1998, " + where, Standing.PUBLISHED);
    }

    Ledger of(ZoneId zone, String figure) {
        String[] words = figure.strip().split("\\s+");
        String when = words.length == 2 ? words[1] : "";
        Optional<Month> month = month(when);
        if (!FIGURES.contains(words[0]) || month.isEmpty() && !when.equals(PEAK)) {
            throw new InvalidValueException(
                    "why",
                    "figure",
                    "'" + figure + "'",
                    "minutes, use or volume, and then a month or 'peak', such as 'minutes July'");
        }
        ZoneSchedule schedule = result.zones().get(zone);
        if (schedule == null) {
            throw new UnfinishedException(List.of("zone " + zone + " has no schedule: "
                    + (result.place().isEmpty() ? "no climate is stated" : "it waters no lawn and no bed")));
        }
        ZoneMonth row = month.map(schedule::month).orElse(schedule.peak());
        return new Ledger(Subject.of(zone), figure, steps(words[0], schedule.ground(), row));
    }

    private static Optional<Month> month(String name) {
        String wanted = name.toUpperCase(Locale.ROOT);
        return Arrays.stream(Month.values())
                .filter(month -> wanted.length() >= 3 && month.name().startsWith(wanted))
                .findFirst();
    }

    private List<Step> steps(String figure, ZoneGround ground, ZoneMonth row) {
        List<Step> steps = new ArrayList<>();
        steps.add(reference(row));
        steps.add(coefficient(ground, row));
        steps.add(step(
                "water that the planting uses a day",
                "ET0 · Kc",
                row.balance().use(),
                fao("equation 58"),
                input("ET0", row.balance().reference()),
                input("Kc", row.balance().coefficient())));
        if (figure.equals("use")) {
            return steps;
        }
        addDepths(steps, ground, row);
        addTimes(steps, ground, row);
        if (figure.equals("volume")) {
            steps.add(step(
                    "water of the month",
                    "Q · minutes · days of the month / 7",
                    row.volume(),
                    ARITHMETIC,
                    input("Q", ground.flow()),
                    input("minutes", row.setting().week())));
        }
        return steps;
    }

    private Step reference(ZoneMonth row) {
        YardMonth month = result.months().get(row.month().ordinal());
        ClimateMonth weather = SchedulePass.climate(site).orElseThrow().month(row.month());
        String estimated = month.reference().estimated().isEmpty()
                ? ""
                : ", without " + String.join(", ", month.reference().estimated());
        String text = String.format(
                Locale.ROOT,
                "reference use of a day in %s, %.1f to %.1f °C%s",
                ClimateMonth.name(row.month()),
                weather.lowC(),
                weather.highC(),
                estimated);
        List<Step.Input> inputs = new ArrayList<>();
        weather.humidity().ifPresent(share -> inputs.add(input("RH", share)));
        weather.wind().ifPresent(wind -> inputs.add(input("u2", wind)));
        return new Step(
                text, month.reference().method().label(), inputs, row.balance().reference(), FAO);
    }

    private Step coefficient(ZoneGround ground, ZoneMonth row) {
        PlantKind kind = site.catalog().watering().plant(ground.planting());
        GrowingPlace place = ground.growing();
        return step(
                "crop coefficient of " + kind.title() + " on " + ground.ground().name(),
                "Kc of the month · density · microclimate",
                row.balance().coefficient(),
                kind.citation(),
                input(
                        "density",
                        site.catalog().watering().density(place.density()).value()),
                input(
                        "microclimate",
                        site.catalog()
                                .watering()
                                .microclimate(place.microclimate())
                                .value()));
    }

    private void addDepths(List<Step> steps, ZoneGround ground, ZoneMonth row) {
        WaterBalance balance = row.balance();
        PlantKind kind = site.catalog().watering().plant(ground.planting());
        steps.add(step(
                "water that " + ground.soil().key() + " holds before the planting suffers",
                "p · available water · root depth, p = depletion + 0.04 · (5 - use in mm)",
                balance.held(),
                fao("equations 82 and 83, table 22"),
                input("available water", ground.soil().availableWater()),
                input("root depth", kind.root()),
                input("depletion", kind.depletion())));
        steps.add(step(
                "rain of the month that the planting can use",
                "SF(held) · (1.2525 · P^0.82416 - 2.9352) · 10^(0.000955 · use of the month)",
                balance.rain(),
                SCS));
        steps.add(step(
                "net depth a day",
                "use - rain / days of the month",
                balance.net(),
                ARITHMETIC,
                input("use", balance.use()),
                input("rain", balance.rain())));
        steps.add(step(
                ground.measured()
                        ? "gross depth a day, for the plan's own unevenness"
                        : "gross depth a day, for the unevenness usual with such heads",
                "net / (0.4 + 0.6 · DU)",
                balance.gross(),
                MULTIPLIER,
                input("net", balance.net()),
                input("DU", ground.evenness())));
    }

    private void addTimes(List<Step> steps, ZoneGround ground, ZoneMonth row) {
        WaterBalance balance = row.balance();
        ZoneSetting setting = row.setting();
        steps.add(step(
                "whole days that the held water lasts",
                "held / net",
                balance.interval(),
                ARITHMETIC,
                input("held", balance.held()),
                input("net", balance.net())));
        steps.add(step(
                "days a week, of the allowed ones the fewest that keep the interval",
                "count",
                Count.of(setting.days().size()),
                ARITHMETIC));
        if (setting.runs()) {
            double weekS =
                    Application.runS(balance.gross().metres() * 7, ground.rate().si());
            steps.add(step(
                    "time for the depth of a week",
                    "7 · gross / rate",
                    new TimeSpan(weekS),
                    ARITHMETIC,
                    input("gross", balance.gross()),
                    input("rate", ground.rate())));
            ground.intake()
                    .ifPresent(intake -> steps.add(step(
                            "cycles on each day, so that no water runs off",
                            "time of a day · (rate - intake) / surface storage, rounded up",
                            setting.cycles(),
                            intake.citation(),
                            input("rate", ground.rate()),
                            input("intake", intake.most()),
                            input("surface storage", parameters.surfaceStorage()),
                            input("slope", ground.slope()))));
            steps.add(step(
                    "length of a cycle, in whole minutes",
                    "time of a day / cycles, rounded up",
                    setting.cycle(),
                    ARITHMETIC));
        }
        steps.add(step(
                "minutes a week",
                "days · cycles · cycle",
                setting.week(),
                ARITHMETIC,
                input("days", Ratio.of(setting.days().size())),
                input("cycles", setting.cycles()),
                input("cycle", setting.cycle())));
    }

    private static Step step(String text, String formula, Quantity value, Citation citation, Step.Input... inputs) {
        return new Step(text, formula, List.of(inputs), value, citation);
    }

    private static Step.Input input(String name, Quantity value) {
        return new Step.Input(name, value);
    }
}
