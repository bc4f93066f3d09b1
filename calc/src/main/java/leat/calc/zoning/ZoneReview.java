package leat.calc.zoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.Progress;
import leat.model.catalog.Rules;
import leat.model.finding.Finding;
import leat.model.finding.Status;
import leat.model.finding.Subject;
import leat.model.id.ZoneId;
import leat.model.plan.Site;
import leat.model.quantity.Count;
import leat.model.quantity.Flow;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Pressure;
import leat.model.quantity.Quantity;
import leat.model.quantity.Ratio;
import leat.model.water.Head;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;

/** The calculation that looks over the zones of a yard: how much each draws, and whether its heads go together. */
public final class ZoneReview {

    private ZoneReview() {}

    /** Flows are at the reference pressures of the heads. */
    public static ZoneReviewResult run(Site site, ZoningParameters parameters, Progress progress) {
        List<Finding> findings = new ArrayList<>();
        SortedMap<ZoneId, ZoneReviewResult.Figures> figures = new TreeMap<>();
        List<Zone> zones = site.yard().water().zones();
        for (Zone zone : zones) {
            if (progress.stopped()) {
                return new ZoneReviewResult(Status.STOPPED, figures, findings);
            }
            progress.at((double) figures.size() / zones.size(), "zone " + zone.id());
            figures.put(zone.id(), look(zone, site, parameters, findings));
        }
        addHeadsWithoutZone(site, findings);
        return new ZoneReviewResult(Status.COMPLETE, figures, findings);
    }

    private static ZoneReviewResult.Figures look(
            Zone zone, Site site, ZoningParameters parameters, List<Finding> findings) {
        WaterSystem water = site.yard().water();
        List<Head> heads =
                zone.heads().stream().flatMap(id -> water.head(id).stream()).toList();
        double flowM3PerS = heads.stream()
                .mapToDouble(head ->
                        site.catalog().head(head.family()).referenceFlow(head).si())
                .sum();
        Flow flow = Flow.cubicMetresPerSecond(flowM3PerS);
        Optional<Flow> safe = safeFlow(zone, heads, site, parameters);
        Rules rules = site.rules();
        safe.ifPresent(most -> hold(
                rules,
                "zoning.flow",
                zone,
                Ratio.of(flow.si() / most.si()),
                "split the zone, or choose heads that draw less",
                findings));
        int shapes = (int) heads.stream().map(HeadKinds::shape).distinct().count();
        hold(rules, "zoning.mixed", zone, Count.of(shapes), "give each kind of head its own zone", findings);
        Ratio spread = rateSpread(heads, site);
        hold(rules, "zoning.precipitation", zone, spread, "use nozzles that match, or split the zone", findings);
        return new ZoneReviewResult.Figures(flow, safe, Count.of(heads.size()), spread);
    }

    private static Optional<Flow> safeFlow(Zone zone, List<Head> heads, Site site, ZoningParameters parameters) {
        Optional<Pressure> wanted = heads.stream()
                .map(head -> site.catalog().head(head.family()).pressure().reference())
                .max(Pressure::compareTo);
        return wanted.flatMap(pressure -> site.yard()
                .water()
                .manifoldOf(zone.valve())
                .flatMap(manifold ->
                        SafeFlow.asItIs(manifold, site, parameters, pressure).flow()));
    }

    /** The largest over the least rate among heads that throw; 1 where fewer than two do. */
    private static Ratio rateSpread(List<Head> heads, Site site) {
        double[] ratesMPerS = heads.stream()
                .flatMap(head -> HeadKinds.rate(head, site).stream())
                .mapToDouble(PrecipitationRate::si)
                .sorted()
                .toArray();
        return Ratio.of(ratesMPerS.length < 2 ? 1 : ratesMPerS[ratesMPerS.length - 1] / ratesMPerS[0]);
    }

    private static void hold(
            Rules rules, String rule, Zone zone, Quantity measured, String advice, List<Finding> findings) {
        if (!rules.get(rule).isKeptBy(measured)) {
            findings.add(Finding.of(rules.get(rule), Subject.of(zone.id()), measured, advice));
        }
    }

    private static void addHeadsWithoutZone(Site site, List<Finding> findings) {
        WaterSystem water = site.yard().water();
        for (Head head : water.heads()) {
            if (water.zoneOf(head.id()).isEmpty()) {
                findings.add(Finding.of(
                        site.rules().get("zoning.heads"),
                        Subject.of(head.id()),
                        Count.of(1),
                        "give it a zone, or let zones be planned"));
            }
        }
    }
}
