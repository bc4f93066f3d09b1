package leat.calc.hydraulics;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.catalog.PressureRange;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Standing;
import leat.model.finding.Subject;
import leat.model.id.BibId;
import leat.model.id.HeadId;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.id.ZoneId;
import leat.model.plan.Site;
import leat.model.quantity.Pressure;
import leat.model.quantity.Quantity;
import leat.model.quantity.Ratio;
import leat.model.quantity.Velocity;
import leat.model.water.Mains;
import leat.model.water.PipeFeeds;
import leat.model.water.Pump;
import leat.model.water.Source;
import leat.model.water.WaterSystem;

/** Holds pressures, flows and velocities against the rules; used once. */
final class HydraulicReview {

    private final Site site;
    private final WaterSystem water;
    private final PipeFeeds feeds;
    private final SortedMap<ZoneId, ZoneRun> zones;
    private final SortedMap<BibId, BibRun> bibs;
    private final List<Finding> findings = new ArrayList<>();

    HydraulicReview(Site site, SortedMap<ZoneId, ZoneRun> zones, SortedMap<BibId, BibRun> bibs) {
        this.site = site;
        this.water = site.yard().water();
        this.feeds = water.feeds();
        this.zones = zones;
        this.bibs = bibs;
    }

    List<Finding> findings() {
        water.sources().forEach(this::checkSource);
        zones.forEach((id, run) -> {
            if (run.status().isSolved()) {
                checkZone(id, run);
            }
        });
        bibs.forEach((id, run) -> {
            if (run.status().isSolved()) {
                hold("hydraulics.starved", id, run.pressure(), "draw less, or use larger pipe to it");
                checkSupply(id, run.supply(), run.pipes());
            }
        });
        checkVelocities();
        findings.addAll(new StandingPressure(site, zones).findings());
        findings.addAll(new BackflowHeights(site).findings());
        return findings;
    }

    private void checkSource(Source source) {
        hold(
                "source.pressure",
                source.id(),
                source.staticPressure(),
                "fit a pressure reducing valve; the water supplier decides");
        if (source instanceof Pump pump) {
            hold("source.lift", source.id(), pump.lift(), "set the pump lower, or into the water");
        }
    }

    private void checkZone(ZoneId id, ZoneRun run) {
        checkSupply(id, run.supply(), run.pipes());
        checkMeter(id, run);
        double leastPa = Double.POSITIVE_INFINITY;
        double mostPa = Double.NEGATIVE_INFINITY;
        double sumPa = 0;
        for (var entry : run.heads().entrySet()) {
            double pressurePa = entry.getValue().pressure().pascals();
            leastPa = Math.min(leastPa, pressurePa);
            mostPa = Math.max(mostPa, pressurePa);
            sumPa += pressurePa;
            checkHead(entry.getKey(), entry.getValue().pressure());
        }
        if (run.status() == RunStatus.STARVED) {
            Rule rule = site.rules().get("hydraulics.starved");
            findings.add(Finding.of(
                    rule, Subject.of(id), new Pressure(leastPa), "lose less on the way, or draw less at a time"));
        } else if (run.heads().size() > 1) {
            double meanPa = sumPa / run.heads().size();
            Ratio spread = Ratio.of((mostPa - leastPa) / meanPa);
            hold("hydraulics.spread", id, spread, "use larger pipe in the zone, or split it");
        }
    }

    /** The family's own range counts, unless the yard states a limit. */
    private void checkHead(HeadId id, Pressure pressure) {
        PressureRange range =
                site.catalog().head(water.head(id).orElseThrow().family()).pressure();
        holdOwn("hydraulics.pressure.least", id, pressure, range.least(), "lose less on the way, or split the zone");
        holdOwn("hydraulics.pressure.most", id, pressure, range.most(), "fit heads or a valve that regulate pressure");
    }

    private void holdOwn(String ruleId, HeadId id, Pressure measured, Pressure own, String advice) {
        Rule rule = site.rules().get(ruleId);
        boolean stated = rule.citation().standing() == Standing.STATED;
        Rule judged =
                stated ? rule : new Rule(rule.id(), rule.title(), rule.side(), own, rule.severity(), rule.citation());
        if (!judged.isKeptBy(measured)) {
            findings.add(Finding.of(judged, Subject.of(id, "pressure"), measured, advice));
        }
    }

    private void checkSupply(Id id, Pressure supply, SortedMap<PipeId, PipeLoad> pipes) {
        boolean publicSupply = pipes.keySet().stream()
                .findFirst()
                .flatMap(feeds::sourceOf)
                .filter(source -> source instanceof Mains)
                .isPresent();
        if (publicSupply) {
            hold("source.residual", id, supply, "draw less at a time");
        }
    }

    private void checkMeter(ZoneId id, ZoneRun run) {
        run.pipes().keySet().stream()
                .findFirst()
                .flatMap(feeds::sourceOf)
                .flatMap(Source::meter)
                .ifPresent(key -> {
                    double share =
                            run.flow().si() / site.catalog().device(key).most().si();
                    hold("source.flow", id, Ratio.of(share), "split the zone, or choose heads that draw less");
                });
    }

    /** Each pipe once, in the zone or with the bib that draws most through it. */
    private void checkVelocities() {
        SortedMap<PipeId, Velocity> greatest = new TreeMap<>();
        zones.values().forEach(run -> addVelocities(run.pipes(), greatest));
        bibs.values().forEach(run -> addVelocities(run.pipes(), greatest));
        greatest.forEach((pipe, velocity) ->
                hold("hydraulics.velocity", pipe, velocity, "use the next larger size, or draw less at a time"));
    }

    private static void addVelocities(SortedMap<PipeId, PipeLoad> pipes, SortedMap<PipeId, Velocity> greatest) {
        pipes.forEach((pipe, load) -> greatest.merge(pipe, load.velocity(), (a, b) -> a.compareTo(b) >= 0 ? a : b));
    }

    private void hold(String ruleId, Id id, Quantity measured, String advice) {
        Rule rule = site.rules().get(ruleId);
        if (!rule.isKeptBy(measured)) {
            findings.add(Finding.of(rule, Subject.of(id), measured, advice));
        }
    }
}
