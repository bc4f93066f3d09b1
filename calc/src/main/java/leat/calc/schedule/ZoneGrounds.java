package leat.calc.schedule;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import leat.calc.coverage.SurfaceCoverage;
import leat.model.catalog.HeadShape;
import leat.model.catalog.IntakeRate;
import leat.model.catalog.SoilTexture;
import leat.model.catalog.UsualFigure;
import leat.model.geometry.Point;
import leat.model.geometry.Sector;
import leat.model.id.HeadId;
import leat.model.id.Id;
import leat.model.id.SurfaceId;
import leat.model.plan.Site;
import leat.model.quantity.Angle;
import leat.model.quantity.Area;
import leat.model.quantity.Flow;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Ratio;
import leat.model.site.Surface;
import leat.model.water.DripLine;
import leat.model.water.Head;
import leat.model.water.Zone;

/**
 * Finds what each zone waters. Coverage knows the rate of a surface while all of its heads run; where zones share it, each
 * is taken to water a part as large as what its heads could throw on, and its rate follows from its part of the flow.
 */
final class ZoneGrounds {

    static final String USUAL_SOIL = "loam";

    /** Where in its arc a head is taken to water, as shares of the sweep: heads on an edge often throw along it. */
    private static final List<Double> LOOKS = List.of(0.5, 0.25, 0.75);

    private final Site site;
    private final ScheduleParameters parameters;
    private final SortedMap<HeadId, WateredGround> grounds = new TreeMap<>();

    /** Kept, for many heads water one surface. */
    private final SortedMap<SurfaceId, Ratio> slopes = new TreeMap<>();

    ZoneGrounds(Site site, ScheduleParameters parameters) {
        this.site = site;
        this.parameters = parameters;
        for (Head head : site.yard().water().heads()) {
            groundOf(head).ifPresent(ground -> grounds.put(head.id(), ground));
        }
    }

    /** Empty for a zone that waters no lawn, no bed and no tree. */
    Optional<ZoneGround> of(Zone zone) {
        List<Head> heads = zone.heads().stream()
                .flatMap(id -> site.yard().water().head(id).stream())
                .toList();
        SortedMap<Id, Double> flowM3PerS = new TreeMap<>();
        for (Head head : heads) {
            WateredGround ground = grounds.get(head.id());
            if (ground != null) {
                flowM3PerS.merge(ground.id(), flow(head).si(), Double::sum);
            }
        }
        // The first of equals, so that ties go by id.
        Comparator<Map.Entry<Id, Double>> most = Comparator.comparing(Map.Entry::getValue);
        return flowM3PerS.entrySet().stream()
                .filter(one -> one.getValue() > 0)
                .max(most.thenComparing(Map.Entry::getKey, Comparator.reverseOrder()))
                .map(one -> ground(zone, heads, one.getKey()));
    }

    private ZoneGround ground(Zone zone, List<Head> heads, Id id) {
        Head first = heads.stream().filter(head -> isOn(id, head)).findFirst().orElseThrow();
        WateredGround ground = Optional.ofNullable(grounds.get(first.id())).orElseThrow();
        boolean throwing = first.sector().isPresent();
        List<Head> all = site.yard().water().heads().stream()
                .filter(head -> isOn(id, head) && head.sector().isPresent() == throwing)
                .toList();
        List<Head> here = all.stream().filter(heads::contains).toList();
        double share = throwing ? thrownM2(here) / thrownM2(all) : flowM3PerS(here) / flowM3PerS(all);
        Area area = ground.area().times(share);
        Optional<SurfaceCoverage> coverage =
                coverageOf(id).filter(one -> throwing && one.mean().si() > 0);
        double rateMPerS = coverage.map(one -> one.mean().si() * (flowM3PerS(here) / flowM3PerS(all)) / share)
                .orElseGet(() -> flowM3PerS(here) / area.si());
        HeadShape shape = site.catalog().head(first.family()).shape();
        UsualFigure usual = site.catalog().watering().evenness(shape);
        SoilTexture soil = site.catalog().soil(ground.soil().orElse(USUAL_SOIL));
        return new ZoneGround(
                zone.id(),
                id,
                ground.plant().kind().key(),
                ground.growing(),
                soil,
                ground.slope(),
                area,
                zoneFlow(zone, heads),
                new PrecipitationRate(rateMPerS),
                coverage.map(SurfaceCoverage::lowQuarter).orElseGet(usual::value),
                coverage.isPresent(),
                throwing ? Optional.of(intake(soil, ground.slope(), ground.covered())) : Optional.empty());
    }

    private boolean isOn(Id id, Head head) {
        return Optional.ofNullable(grounds.get(head.id()))
                .filter(ground -> ground.id().equals(id))
                .isPresent();
    }

    private Optional<SurfaceCoverage> coverageOf(Id id) {
        return id instanceof SurfaceId surface
                ? Optional.ofNullable(parameters.coverage().surfaces().get(surface))
                : Optional.empty();
    }

    /** By soil, slope and cover; of a soil that the table does not know, its own intake. */
    private IntakeRate intake(SoilTexture soil, Ratio slope, boolean covered) {
        return site.catalog()
                .watering()
                .intake(soil.key(), slope, covered)
                .orElseGet(() -> new IntakeRate(
                        soil.key(), Ratio.ZERO, Optional.empty(), covered, soil.intake(), soil.citation()));
    }

    private Flow zoneFlow(Zone zone, List<Head> heads) {
        return Optional.ofNullable(parameters.hydraulics().zones().get(zone.id()))
                .filter(run -> run.flow().si() > 0)
                .map(run -> run.flow())
                .orElseGet(() -> new Flow(flowM3PerS(heads)));
    }

    private double flowM3PerS(List<Head> heads) {
        return heads.stream().mapToDouble(head -> flow(head).si()).sum();
    }

    /** What it gives; of one that gets no water, what it would give. */
    private Flow flow(Head head) {
        return parameters
                .hydraulics()
                .head(head.id())
                .map(got -> got.flow())
                .filter(flow -> flow.si() > 0)
                .orElseGet(() -> site.catalog().head(head.family()).referenceFlow(head));
    }

    private static double thrownM2(List<Head> heads) {
        return heads.stream()
                .flatMap(head -> head.sector().stream())
                .mapToDouble(sector -> sector.area().si())
                .sum();
    }

    /** What lies half way out in its arc or along it, or else where it stands. */
    private Optional<WateredGround> groundOf(Head head) {
        if (head instanceof DripLine line) {
            return WateredGround.letOutAt(line.path().at(line.path().length().times(0.5)), site, this::slope);
        }
        if (head.sector().isEmpty()) {
            return WateredGround.letOutAt(head.at(), site, this::slope);
        }
        Stream<Point> looks =
                head.sector().stream().flatMap(sector -> LOOKS.stream().map(share -> halfWayOut(sector, share)));
        return Stream.concat(looks, Stream.of(head.at()))
                .flatMap(point -> WateredGround.thrownOn(point, site, this::slope).stream())
                .findFirst();
    }

    private Ratio slope(Surface surface) {
        return slopes.computeIfAbsent(
                surface.id(),
                id -> SurfaceSlope.of(surface, site.yard().terrain().ground()));
    }

    private static Point halfWayOut(Sector sector, double share) {
        double bearing =
                sector.arc().start().degrees() + share * sector.arc().sweep().degrees();
        return sector.apex().moved(Angle.degrees(bearing), sector.radius().times(0.5));
    }
}
