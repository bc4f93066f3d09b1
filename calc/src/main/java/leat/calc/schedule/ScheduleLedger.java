package leat.calc.schedule;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import leat.calc.schedule.internal.Application;
import leat.model.catalog.IntakeRate;
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
import leat.model.quantity.Length;
import leat.model.quantity.Quantity;
import leat.model.quantity.TimeSpan;
import leat.model.quantity.UnitSystem;
import leat.model.water.Climate;
import leat.model.water.ClimateMonth;
import leat.model.water.GrowingPlace;

/** Writes how a figure of the schedule came about, from the weather to the minutes. */
final class ScheduleLedger {

    private static final String PEAK = "peak";
    private static final List<String> FIGURES = List.of(
            "use", "held", "rain", "net", "gross", "interval", "days", "cycles", "cycle", "soak", "minutes", "volume");
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
                    "one of " + String.join(", ", FIGURES) + ", and then a month or 'peak', such as 'minutes July'");
        }
        ZoneSchedule schedule = result.zones().get(zone);
        if (schedule == null) {
            throw new UnfinishedException(List.of("zone " + zone + " has no schedule: "
                    + (result.place().isEmpty() ? "no climate is stated" : "it waters no lawn and no bed")));
        }
        ZoneMonth row = month.map(schedule::month).orElse(schedule.peak());
        return new Ledger(Subject.of(zone), figure, steps(words[0], schedule.ground(), row, month.isEmpty()));
    }

    static Optional<Month> month(String name) {
        String wanted = name.toUpperCase(Locale.ROOT);
        return Arrays.stream(Month.values())
                .filter(month -> wanted.length() >= 3 && month.name().startsWith(wanted))
                .findFirst();
    }

    /** From the weather on, each step under the name of its figure, as far as the figure that was asked for; a dry week has no rain. */
    private List<Step> steps(String figure, ZoneGround ground, ZoneMonth row, boolean dry) {
        List<Step> steps = new ArrayList<>();
        steps.add(reference(row));
        steps.add(coefficient(ground, row));
        Map<String, Step> named = new LinkedHashMap<>();
        named.put(
                "use",
                step(
                        "water that the planting uses a day",
                        "ET0 · Kc",
                        row.balance().use(),
                        fao("equation 58"),
                        input("ET0", row.balance().reference()),
                        input("Kc", row.balance().coefficient())));
        addDepths(named, ground, row, dry);
        addTimes(named, ground, row);
        named.put(
                "volume",
                step(
                        "water of the month",
                        "Q · minutes · days of the month / 7",
                        row.volume(),
                        ARITHMETIC,
                        input("Q", ground.flow()),
                        input("minutes", row.setting().week()),
                        input("days of the month", Count.of(row.month().length(false)))));
        for (Map.Entry<String, Step> one : named.entrySet()) {
            steps.add(one.getValue());
            if (one.getKey().equals(figure)) {
                return steps;
            }
        }
        throw new AssertionError(figure);
    }

    private Step reference(ZoneMonth row) {
        YardMonth month = result.months().get(row.month().ordinal());
        Climate climate = climate();
        ClimateMonth weather = climate.month(row.month());
        String estimated = month.reference().estimated().isEmpty()
                ? ""
                : ", without " + String.join(", ", month.reference().estimated());
        String text = String.format(
                Locale.ROOT,
                "reference use of a day in %s, %s to %s °%s",
                ClimateMonth.name(row.month()),
                degrees(weather.lowC()),
                degrees(weather.highC()),
                (site.yard().units() == UnitSystem.US ? "F" : "C") + estimated);
        List<Step.Input> inputs = new ArrayList<>();
        weather.humidity().ifPresent(share -> inputs.add(input("relative humidity", share)));
        weather.wind().ifPresent(wind -> inputs.add(input("wind at 2 m", wind)));
        inputs.add(input("latitude", climate.latitude()));
        inputs.add(input("altitude", climate.altitude()));
        return new Step(
                text, month.reference().method().label(), inputs, row.balance().reference(), FAO);
    }

    private Climate climate() {
        return SchedulePass.climate(site).orElseThrow();
    }

    private String degrees(double celsius) {
        return String.format(
                Locale.ROOT, "%.1f", site.yard().units() == UnitSystem.US ? celsius * 9 / 5 + 32 : celsius);
    }

    private Step coefficient(ZoneGround ground, ZoneMonth row) {
        PlantKind kind = site.catalog().watering().plant(ground.planting());
        GrowingPlace place = ground.growing();
        return step(
                "crop coefficient of " + kind.title() + " on " + ground.ground().name(),
                "Kc of the month · density · microclimate",
                row.balance().coefficient(),
                kind.citation(),
                input("Kc of the month", CropCoefficients.ofKind(kind, climate(), row.month())),
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

    private void addDepths(Map<String, Step> steps, ZoneGround ground, ZoneMonth row, boolean dry) {
        WaterBalance balance = row.balance();
        PlantKind kind = site.catalog().watering().plant(ground.planting());
        steps.put(
                "held",
                step(
                        "water that " + ground.soil().key() + " holds before the planting suffers",
                        "p · available water · root depth, p = depletion + 0.04 · (5 - use in mm)",
                        balance.held(),
                        fao("equations 82 and 83, table 22"),
                        input("available water", ground.soil().availableWater()),
                        input("root depth", kind.root()),
                        input("depletion", kind.depletion())));
        steps.put("rain", rain(row, dry));
        steps.put(
                "net",
                step(
                        "net depth a day",
                        "use - rain / days of the month",
                        balance.net(),
                        ARITHMETIC,
                        input("use", balance.use()),
                        input("rain", balance.rain()),
                        input("days of the month", Count.of(row.month().length(false)))));
        steps.put(
                "gross",
                step(
                        ground.measured()
                                ? "gross depth a day, for the plan's own unevenness"
                                : "gross depth a day, for the unevenness usual with such heads",
                        "net / (0.4 + 0.6 · DU)",
                        balance.gross(),
                        MULTIPLIER,
                        input("net", balance.net()),
                        input("DU", ground.evenness())));
    }

    private Step rain(ZoneMonth row, boolean dry) {
        Optional<Length> fallen = climate().month(row.month()).rain();
        if (dry || fallen.isEmpty()) {
            String text =
                    dry ? "rain: the week that asks for most is one without" : "rain: none is stated for this place";
            return step(text, "none", row.balance().rain(), Citation.OF_THE_YARD);
        }
        return step(
                "rain of the month that the planting can use; never more than falls or is used",
                "SF · (1.2525 · P^0.82416 - 2.9352) · 10^(0.000955 · U), all in mm;"
                        + " SF = 0.5317 + 0.01162 · H - 8.943e-5 · H² + 2.321e-7 · H³",
                row.balance().rain(),
                SCS,
                input("P, rain of the month", fallen.get()),
                input(
                        "U, use of the month",
                        row.balance().use().times(row.month().length(false))),
                input("H, held", row.balance().held()));
    }

    private void addTimes(Map<String, Step> steps, ZoneGround ground, ZoneMonth row) {
        WaterBalance balance = row.balance();
        ZoneSetting setting = row.setting();
        steps.put(
                "interval",
                step(
                        "whole days that the held water lasts",
                        "held / net",
                        balance.interval(),
                        ARITHMETIC,
                        input("held", balance.held()),
                        input("net", balance.net())));
        steps.put(
                "days",
                step(
                        setting.runs()
                                ? "days a week, of the allowed ones the fewest that keep the interval: "
                                        + names(setting)
                                : "days a week: it need not run, or is off in that month",
                        "7 / interval, as evenly spread as the allowed days let it",
                        Count.of(setting.days().size()),
                        ARITHMETIC,
                        input("interval", balance.interval())));
        addCycles(steps, ground, row);
        steps.put(
                "minutes",
                step(
                        "minutes a week",
                        "days · cycles · cycle",
                        setting.week(),
                        ARITHMETIC,
                        input("days", Count.of(setting.days().size())),
                        input("cycles", setting.cycles()),
                        input("cycle", setting.cycle())));
    }

    private void addCycles(Map<String, Step> steps, ZoneGround ground, ZoneMonth row) {
        ZoneSetting setting = row.setting();
        if (!setting.runs()) {
            steps.put(
                    "cycles",
                    step("cycles: the zone does not run then", "nothing to give", setting.cycles(), ARITHMETIC));
            steps.put("cycle", step("length of a cycle", "nothing to give", setting.cycle(), ARITHMETIC));
            steps.put("soak", step("soak between cycles", "nothing to give", setting.soak(), ARITHMETIC));
            return;
        }
        steps.put(
                "rate",
                step(
                        "rate at which water falls on what the zone waters",
                        ground.measured()
                                ? "mean of the cells of " + ground.ground().name() + ", this zone's part"
                                : "Q / area",
                        ground.rate(),
                        ARITHMETIC,
                        input("Q", ground.flow()),
                        input("area", ground.area())));
        double weekS = Application.runS(
                row.balance().gross().metres() * 7, ground.rate().si());
        TimeSpan day = new TimeSpan(weekS / setting.days().size());
        steps.put(
                "time",
                step(
                        "time for the depth of a week, on each of its days",
                        "7 · gross / rate / days",
                        day,
                        ARITHMETIC,
                        input("gross", row.balance().gross()),
                        input("rate", ground.rate()),
                        input("days", Count.of(setting.days().size()))));
        steps.put("cycles", cycles(ground, setting, day));
        steps.put(
                "cycle",
                step(
                        "length of a cycle, in whole minutes",
                        "time of a day / cycles, rounded up",
                        setting.cycle(),
                        ARITHMETIC,
                        input("time of a day", day),
                        input("cycles", setting.cycles())));
        steps.put("soak", soak(ground, setting));
    }

    private static String names(ZoneSetting setting) {
        return setting.days().stream()
                .map(day -> day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH))
                .collect(Collectors.joining(" "));
    }

    private Step cycles(ZoneGround ground, ZoneSetting setting, TimeSpan day) {
        if (ground.intake().isEmpty()) {
            return step(
                    "cycles on each day: water let out at the ground does not run off",
                    "one",
                    setting.cycles(),
                    ARITHMETIC);
        }
        IntakeRate intake = ground.intake().get();
        return step(
                "cycles on each day, so that no water runs off",
                "time of a day · (rate - intake) / surface storage, rounded up, at least 1",
                setting.cycles(),
                intake.citation(),
                input("time of a day", day),
                input("rate", ground.rate()),
                input("intake", intake.most()),
                input("surface storage", parameters.surfaceStorage()),
                input("slope of the ground", ground.slope()));
    }

    private static Step soak(ZoneGround ground, ZoneSetting setting) {
        if (setting.soak().si() == 0) {
            return step("least time between two cycles", "none with one cycle", setting.soak(), ARITHMETIC);
        }
        return step(
                "least time between two cycles, in whole minutes",
                "cycle · (rate - intake) / intake, rounded up",
                setting.soak(),
                ARITHMETIC,
                input("cycle", setting.cycle()),
                input("rate", ground.rate()),
                input("intake", ground.intake().map(IntakeRate::most).orElse(ground.rate())));
    }

    private static Step step(String text, String formula, Quantity value, Citation citation, Step.Input... inputs) {
        return new Step(text, formula, List.of(inputs), value, citation);
    }

    private static Step.Input input(String name, Quantity value) {
        return new Step.Input(name, value);
    }
}
