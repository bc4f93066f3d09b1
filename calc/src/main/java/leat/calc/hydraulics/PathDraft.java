package leat.calc.hydraulics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import leat.calc.internal.pipes.PipeLaw;
import leat.model.catalog.Device;
import leat.model.catalog.PipeSpec;
import leat.model.finding.Citation;
import leat.model.finding.Standing;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.plan.Site;
import leat.model.quantity.Length;
import leat.model.water.Head;
import leat.model.water.PipeRun;
import leat.model.water.Source;

/** Lays the links of a water path one behind the other, from the source on. Place 0 is the source at rest. */
final class PathDraft {

    static final Citation HAZEN_WILLIAMS = new Citation(
            "Hazen and Williams: h = 10.67 L Q^1.852 / (C^1.852 d^4.8704); fittings K v²/(2g)", Standing.RECOMPUTED);

    /** Places of a pipe nearer to each other than this are one. */
    private static final double SAME_PLACE_M = 1e-6;

    private final Site site;
    private final FittingLosses fittings;
    private final Source source;
    private final List<Link> links = new ArrayList<>();
    private final SortedMap<HeadId, Integer> heads = new TreeMap<>();
    private final SortedMap<PipeId, WaterPath.PipePlaces> pipes = new TreeMap<>();
    private final Map<PipeId, SortedMap<Double, Integer>> placesOf = new TreeMap<>();

    PathDraft(Site site, FittingLosses fittings, Source source) {
        this.site = site;
        this.fittings = fittings;
        this.source = source;
        links.add(SourceLaw.link(source, sourceElevationM()));
        source.meter().ifPresent(key -> device(Link.Kind.METER, source.id(), key, links.size()));
    }

    Source source() {
        return source;
    }

    double sourceElevationM() {
        return elevationM(source.at());
    }

    List<Link> links() {
        return links;
    }

    SortedMap<HeadId, Integer> heads() {
        return heads;
    }

    SortedMap<PipeId, WaterPath.PipePlaces> pipes() {
        return pipes;
    }

    /** The last place that was laid. */
    int end() {
        return links.size();
    }

    /** A device in the line, at the level of the place before it. */
    int device(Link.Kind kind, Id of, String key, int behind) {
        Device device = site.catalog().device(key);
        double metres = 1 / PipeLaw.PASCALS_PER_M;
        links.add(Link.device(
                behind,
                kind,
                of,
                links.get(behind - 1).elevationM(),
                device.loss().fixed().pascals() * metres,
                device.loss().coefficient() * metres,
                device.loss().exponent(),
                device.citation()));
        return end();
    }

    /** The devices at the inlet of a run; returns the place behind them. */
    int fitted(PipeRun run, int behind) {
        int place = behind;
        for (String key : run.fitted()) {
            place = device(Link.Kind.FITTED, run.id(), key, place);
        }
        return place;
    }

    /**
     * Lays a run as far as its last branch.
     *
     * @param behind   the place that feeds it
     * @param entry    K of the fitting at its start
     * @param stations where water leaves it, in metres from its start; at least one
     */
    void run(PipeRun run, int behind, double entry, SortedSet<Double> stations) {
        PipeSpec spec = site.catalog().pipe(run.tradeSize().orElseThrow());
        double boreM = spec.bore().metres();
        SortedMap<Double, Integer> places = new TreeMap<>();
        List<Integer> after = new ArrayList<>();
        double fromM = 0;
        double k = entry;
        int place = behind;
        for (double stationM : stations) {
            if (stationM - fromM > SAME_PLACE_M) {
                double lengthM = stationM - fromM;
                k += fittings.bends(run.route(), fromM, stationM);
                Point at = run.route().at(new Length(stationM));
                links.add(Link.pipe(
                        place,
                        run.id(),
                        elevationM(at),
                        lengthM,
                        boreM,
                        PipeLaw.frictionCoefficient(
                                lengthM, boreM, spec.hazenWilliamsC().value()),
                        PipeLaw.minorCoefficient(k, boreM),
                        HAZEN_WILLIAMS));
                place = end();
                after.add(place);
                fromM = stationM;
                k = fittings.teeRun();
            }
            places.put(stationM, place);
        }
        placesOf.put(run.id(), places);
        if (!after.isEmpty()) {
            pipes.put(run.id(), new WaterPath.PipePlaces(behind, List.copyOf(after)));
        }
    }

    /** The place that was laid at a station of a run. */
    int placeAt(PipeId run, double stationM) {
        SortedMap<Double, Integer> places = placesOf.getOrDefault(run, new TreeMap<>());
        Integer place = places.get(stationM);
        if (place == null) {
            throw new AssertionError("no place at " + stationM + " m of pipe " + run);
        }
        return place;
    }

    /** A head on its swing joint, which has the size of the run. */
    void head(Head head, PipeRun run, int behind) {
        double boreM = site.catalog().pipe(run.tradeSize().orElseThrow()).bore().metres();
        links.add(new Link(
                behind,
                Link.Kind.HEAD,
                head.id(),
                elevationM(head.at()),
                0,
                boreM,
                0,
                PipeLaw.minorCoefficient(fittings.swingJoint(), boreM),
                0,
                0,
                2,
                HAZEN_WILLIAMS));
        heads.put(head.id(), end());
    }

    /** K of the fitting by which a run leaves another: a tee, or at the other's end a bend. */
    double entry(PipeRun upstream, double stationM, PipeRun run) {
        boolean atEnd = stationM >= upstream.route().lengthM() - SAME_PLACE_M;
        return atEnd ? fittings.joint(upstream.route(), run.route()) : fittings.teeBranch();
    }

    double elevationM(Point at) {
        return site.yard().terrain().ground().levelFinished(at).metres();
    }
}
