package leat.calc.schedule;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import leat.calc.schedule.internal.WeekDays;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Subject;
import leat.model.id.Id;
import leat.model.id.ZoneId;
import leat.model.plan.Site;
import leat.model.quantity.Count;
import leat.model.quantity.Quantity;
import leat.model.site.Surface;
import leat.model.water.Climate;
import leat.model.water.WateringNeeds;
import leat.model.water.Zone;

/** What is wrong with a schedule, and what had to be assumed for it. */
final class ScheduleFindings {

    private final Site site;
    private final List<Finding> findings = new ArrayList<>();

    ScheduleFindings(Site site) {
        this.site = site;
    }

    /** A yard that says nothing of watering wants no schedule. */
    List<Finding> withoutClimate() {
        if (!site.yard().watering().equals(WateringNeeds.NONE)) {
            hold("watering.climate", Subject.yard(), Count.ZERO, "state a station or a climate of your own");
        }
        return findings;
    }

    void noGround(Zone zone) {
        if (!zone.heads().isEmpty()) {
            hold(
                    "watering.ground",
                    Subject.of(zone.id()),
                    Count.ZERO,
                    "draw the lawn, the bed or the tree that it waters");
        }
    }

    List<Finding> of(
            Climate climate,
            List<ReferenceMonth> year,
            SortedMap<ZoneId, ZoneSchedule> zones,
            Optional<PeakWeek> peak) {
        addClimate(climate, year);
        SortedSet<Id> grounds = new TreeSet<>();
        zones.values().forEach(zone -> grounds.add(zone.ground().ground()));
        site.yard().terrain().surfaces().stream()
                .filter(surface -> grounds.contains(surface.id()))
                .forEach(this::addAssumptions);
        zones.values().forEach(this::addZone);
        peak.ifPresent(this::addWindow);
        return findings;
    }

    private void addClimate(Climate climate, List<ReferenceMonth> year) {
        String missing = year.stream()
                .flatMap(month -> month.estimated().stream())
                .distinct()
                .collect(Collectors.joining(", "));
        long estimates =
                year.stream().mapToLong(month -> month.estimated().size()).sum();
        boolean bare = year.stream().anyMatch(month -> month.method() == EvapotranspirationMethod.HARGREAVES);
        String how = bare ? "; where all of it is, by the formula of Hargreaves from temperatures alone" : "";
        hold(
                "watering.estimates",
                Subject.yard(),
                Count.of((double) estimates),
                missing + " estimated as FAO 56 advises" + how);
        long dry = climate.months().stream()
                .filter(month -> month.rain().isEmpty())
                .count();
        hold(
                "watering.rain",
                Subject.yard(),
                Count.of((double) dry),
                "none was counted there; state the rain to save water");
    }

    private void addAssumptions(Surface surface) {
        PlantChoice plant = PlantChoice.of(surface, site.catalog().watering());
        if (!plant.doubt().isEmpty()) {
            hold("watering.planting", Subject.of(surface.id(), "planting"), Count.ZERO, plant.doubt());
        }
        if (surface.soil().isEmpty()) {
            hold(
                    "watering.soil",
                    Subject.of(surface.id(), "soil"),
                    Count.ZERO,
                    "taken as " + ZoneGrounds.USUAL_SOIL + "; state the texture");
        }
    }

    private void addZone(ZoneSchedule zone) {
        ZoneSetting setting = zone.peak().setting();
        Subject subject = Subject.of(zone.ground().zone());
        if (!setting.runs()) {
            return;
        }
        hold(
                "watering.cycles",
                subject,
                setting.cycles(),
                "nozzles that throw less in an hour, or more days with shorter runs");
        int days = 0;
        for (DayOfWeek day : setting.days()) {
            days |= 1 << day.ordinal();
        }
        Count wait = Count.of(WeekDays.longestWait(days));
        Count held = zone.peak().balance().interval();
        if (wait.compareTo(held) > 0) {
            Rule rule = site.rules().get("watering.interval");
            findings.add(new Finding(
                    rule, rule.severity(), subject, wait, held, "allow more days, or days that lie more evenly"));
        }
    }

    private void addWindow(PeakWeek peak) {
        if (peak.fits()) {
            return;
        }
        Rule rule = site.rules().get("watering.hours");
        boolean flowAllows = peak.least().si() > 0 && peak.least().compareTo(peak.allowed()) <= 0;
        String advice = flowAllows
                ? "allow more hours or days, or let small zones run together: the safe flow would do"
                : "allow more hours or days: even at the safe flow the water takes longer";
        findings.add(new Finding(
                rule,
                rule.severity(),
                Subject.yard(),
                peak.needed(),
                peak.allowed(),
                peak.least().si() > 0 ? advice : "allow more hours or days"));
    }

    private void hold(String id, Subject subject, Quantity measured, String advice) {
        Rule rule = site.rules().get(id);
        if (!rule.isKeptBy(measured)) {
            findings.add(Finding.of(rule, subject, measured, advice));
        }
    }
}
