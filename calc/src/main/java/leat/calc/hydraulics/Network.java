package leat.calc.hydraulics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.Progress;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Finding;
import leat.model.finding.Ledger;
import leat.model.finding.Reason;
import leat.model.finding.Status;
import leat.model.finding.Subject;
import leat.model.id.BibId;
import leat.model.id.HeadId;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.id.ZoneId;
import leat.model.plan.Site;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;
import leat.model.water.HoseBib;
import leat.model.water.Zone;

/**
 * The pipes of a site, laid out once and solved as often as wanted: for one zone, for one bib, with more or less
 * pressure at the source. Keeps its workspace, so it is not safe to share between threads; make one for each.
 */
public final class Network {

    private final Site site;
    private final SortedMap<ZoneId, PathFinder.Found> zones = new TreeMap<>();
    private final SortedMap<BibId, PathFinder.Found> bibs = new TreeMap<>();

    Network(Site site, HydraulicsParameters parameters) {
        this.site = site;
        var finder = new PathFinder(site, parameters);
        for (Zone zone : site.yard().water().zones()) {
            zones.put(zone.id(), finder.zone(zone));
        }
        if (parameters.bibs()) {
            for (HoseBib bib : site.yard().water().bibs()) {
                bibs.put(bib.id(), finder.bib(bib));
            }
        }
    }

    /** The zone alone, with the source as stated. */
    public ZoneRun zone(ZoneId zone) {
        return zone(zone, Pressure.ZERO);
    }

    /**
     * The zone alone.
     *
     * @param more pressure at the source than stated; negative for less
     * @throws InvalidValueException if the site has no such zone
     */
    public ZoneRun zone(ZoneId zone, Pressure more) {
        PathFinder.Found found = found(zones, zone);
        if (found.path().isEmpty()) {
            return ZoneRun.without(found.status());
        }
        WaterPath path = found.path().get();
        if (!path.solve(more)) {
            return ZoneRun.without(RunStatus.NOT_SOLVED);
        }
        SortedMap<HeadId, HeadPressure> heads = new TreeMap<>();
        path.heads()
                .forEach((head, place) ->
                        heads.put(head, new HeadPressure(path.pressure(place), path.outletFlow(place))));
        boolean dry = heads.values().stream().anyMatch(head -> head.pressure().pascals() <= 0);
        return new ZoneRun(
                dry ? RunStatus.STARVED : RunStatus.RUNS,
                path.inflow(),
                path.pressure(WaterPath.OUTLET),
                heads,
                loads(path));
    }

    /** The bib alone, with the source as stated. */
    public BibRun bib(BibId bib) {
        PathFinder.Found found = found(bibs, bib);
        if (found.path().isEmpty()) {
            return BibRun.without(found.status());
        }
        WaterPath path = found.path().get();
        if (!path.solve(Pressure.ZERO)) {
            return BibRun.without(RunStatus.NOT_SOLVED);
        }
        Pressure pressure = path.pressure(path.last());
        return new BibRun(
                pressure.pascals() <= 0 ? RunStatus.STARVED : RunStatus.RUNS,
                pressure,
                path.pressure(WaterPath.OUTLET),
                loads(path));
    }

    /**
     * How a figure of a head, a bib, a zone or a pipe came about, from the source on.
     *
     * @param figure {@code pressure} or {@code flow} of a head or a bib, {@code flow} of a zone, {@code flow},
     *     {@code velocity} or {@code loss} of a pipe while most runs through it
     * @throws InvalidValueException if there is no such figure
     */
    public Ledger why(Id id, String figure) {
        if (id instanceof HeadId head && (figure.equals("pressure") || figure.equals("flow"))) {
            for (PathFinder.Found found : zones.values()) {
                if (found.path().isPresent() && found.path().get().heads().containsKey(head)) {
                    return new Explanation(site, found.path().get()).head(head, figure);
                }
            }
        }
        if (id instanceof BibId bib && (figure.equals("pressure") || figure.equals("flow"))) {
            PathFinder.Found found = bibs.get(bib);
            if (found != null && found.path().isPresent()) {
                return new Explanation(site, found.path().get()).bib(bib, figure);
            }
        }
        if (id instanceof ZoneId zone && figure.equals("flow") && zones.containsKey(zone)) {
            Optional<WaterPath> path = found(zones, zone).path();
            if (path.isPresent()) {
                return new LoadExplanation(new Explanation(site, path.get()), path.get(), zone).zone();
            }
        }
        if (id instanceof PipeId pipe && LoadExplanation.OF_PIPES.contains(figure)) {
            Optional<Id> busiest = busiest(pipe);
            if (busiest.isPresent()) {
                WaterPath path = path(busiest.get()).orElseThrow();
                return new LoadExplanation(new Explanation(site, path), path, busiest.get()).pipe(pipe, figure);
            }
        }
        throw new InvalidValueException(
                id.kind() + " " + id.name(),
                "figure",
                "'" + figure + "'",
                "pressure or flow of a head or a hose bib, flow of a zone, or flow, velocity or loss of a pipe,"
                        + " where sized pipes lead from the source");
    }

    private Optional<WaterPath> path(Id running) {
        return running instanceof ZoneId zone
                ? found(zones, zone).path()
                : found(bibs, (BibId) running).path();
    }

    /** The zone or the bib that draws most through a pipe; the first of equals, zones before bibs. */
    private Optional<Id> busiest(PipeId pipe) {
        Id busiest = null;
        Flow most = Flow.ZERO;
        List<Id> all = new ArrayList<>(zones.keySet());
        all.addAll(bibs.keySet());
        for (Id running : all) {
            PipeLoad load = (running instanceof ZoneId zone
                            ? zone(zone).pipes()
                            : bib((BibId) running).pipes())
                    .get(pipe);
            if (load != null && (busiest == null || load.flow().compareTo(most) > 0)) {
                busiest = running;
                most = load.flow();
            }
        }
        return Optional.ofNullable(busiest);
    }

    /** All zones and bibs, one after the other, and what is wrong. */
    HydraulicsResult result(Progress progress) {
        SortedMap<ZoneId, ZoneRun> zoneRuns = new TreeMap<>();
        SortedMap<BibId, BibRun> bibRuns = new TreeMap<>();
        List<Reason> reasons = new ArrayList<>();
        int all = zones.size() + bibs.size();
        for (ZoneId zone : zones.keySet()) {
            if (progress.stopped()) {
                return result(Status.STOPPED, zoneRuns, bibRuns, reasons);
            }
            progress.at((double) zoneRuns.size() / all, "zone " + zone);
            ZoneRun run = zone(zone);
            zoneRuns.put(zone, run);
            explain(zone, run.status(), reasons);
        }
        for (BibId bib : bibs.keySet()) {
            if (progress.stopped()) {
                return result(Status.STOPPED, zoneRuns, bibRuns, reasons);
            }
            BibRun run = bib(bib);
            bibRuns.put(bib, run);
            explain(bib, run.status(), reasons);
        }
        return result(reasons.isEmpty() ? Status.COMPLETE : Status.PARTIAL, zoneRuns, bibRuns, reasons);
    }

    private HydraulicsResult result(
            Status status,
            SortedMap<ZoneId, ZoneRun> zoneRuns,
            SortedMap<BibId, BibRun> bibRuns,
            List<Reason> reasons) {
        List<Finding> findings = new HydraulicReview(site, zoneRuns, bibRuns).findings();
        return new HydraulicsResult(status, zoneRuns, bibRuns, findings, reasons);
    }

    private static void explain(Id id, RunStatus status, List<Reason> reasons) {
        if (!status.isSolved()) {
            String text = switch (status) {
                case NOT_FED -> "no pipes lead to it from a source, so it was not run";
                case NOT_SIZED -> "a pipe on the way to it has no size yet, so it was not run";
                default -> "no pressures were found at which all its parts agree";
            };
            reasons.add(new Reason(Subject.of(id), text));
        }
    }

    private static SortedMap<PipeId, PipeLoad> loads(WaterPath path) {
        SortedMap<PipeId, PipeLoad> loads = new TreeMap<>();
        path.pipes().forEach((pipe, places) -> loads.put(pipe, path.load(places)));
        return loads;
    }

    private static <K extends Id> PathFinder.Found found(SortedMap<K, PathFinder.Found> all, K id) {
        PathFinder.Found found = all.get(id);
        if (found == null) {
            throw new InvalidValueException(
                    "network", id.kind(), "'" + id.name() + "', which is not there", "a " + id.kind() + " of the site");
        }
        return found;
    }
}
