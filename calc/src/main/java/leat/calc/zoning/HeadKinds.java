package leat.calc.zoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.HeadPhases;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.plan.Site;
import leat.model.quantity.PrecipitationRate;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.water.Bubbler;
import leat.model.water.DripLine;
import leat.model.water.Head;
import leat.model.water.Rotor;

/**
 * Which heads may share a zone: the same shape of wetting, the same sort of surface, built at the same time, and rates that the rule on matched
 * precipitation lets run together.
 */
final class HeadKinds {

    private HeadKinds() {}

    /** The kind of each head as text; equal texts may share a zone. */
    static SortedMap<HeadId, String> of(List<Head> heads, Site site) {
        double mostRatio = site.rules().get("zoning.precipitation").limit().si();
        SortedMap<String, List<Head>> groups = new TreeMap<>();
        for (Head head : heads) {
            String group = shape(head) + " on " + surface(head, site) + ", " + HeadPhases.of(head, site.yard());
            groups.computeIfAbsent(group, key -> new ArrayList<>()).add(head);
        }
        SortedMap<HeadId, String> kinds = new TreeMap<>();
        groups.forEach((group, members) -> {
            List<Head> slowestFirst = new ArrayList<>(members);
            slowestFirst.sort(Comparator.comparingDouble((Head head) -> rateOrZero(head, site))
                    .thenComparing(Head::id));
            double leastRate = -1;
            int step = 0;
            for (Head head : slowestFirst) {
                double rate = rateOrZero(head, site);
                if (leastRate < 0 || rate > leastRate * mostRatio) {
                    leastRate = rate;
                    step++;
                }
                kinds.put(head.id(), group + ", rate " + step);
            }
        });
        return kinds;
    }

    static String shape(Head head) {
        return head instanceof Rotor
                ? "rotor"
                : head instanceof Bubbler ? "bubbler" : head instanceof DripLine ? "drip line" : "spray";
    }

    /** Depth of water in a time over the ground that it throws on; empty for heads that do not throw. */
    static Optional<PrecipitationRate> rate(Head head, Site site) {
        return head.sector().map(sector -> {
            double flowM3PerS =
                    site.catalog().head(head.family()).referenceFlow(head).si();
            return new PrecipitationRate(flowM3PerS / sector.area().si());
        });
    }

    private static double rateOrZero(Head head, Site site) {
        return rate(head, site).map(PrecipitationRate::si).orElse(0.0);
    }

    /** What lies half way out in its arc, else where it stands. */
    private static String surface(Head head, Site site) {
        return HeadPhases.looks(head)
                .flatMap(point -> planted(point, site).stream())
                .findFirst()
                .orElse("other ground");
    }

    private static Optional<String> planted(Point point, Site site) {
        return site.yard().terrain().surfaces().stream()
                .filter(surface -> surface.region().contains(point))
                .map(Surface::kind)
                .filter(kind -> kind == SurfaceKind.LAWN || kind == SurfaceKind.BED)
                .map(kind -> kind == SurfaceKind.LAWN ? "lawn" : "bed")
                .findFirst();
    }
}
