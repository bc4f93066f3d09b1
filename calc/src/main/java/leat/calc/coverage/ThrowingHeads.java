package leat.calc.coverage;

import java.util.List;
import leat.calc.HeadPhases;
import leat.calc.internal.cells.DepthCurve;
import leat.calc.internal.cells.HeadArrays;
import leat.model.catalog.HeadFamily;
import leat.model.geometry.Sector;
import leat.model.plan.Site;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.site.Phase;
import leat.model.water.Head;

/** The heads that throw, sorted by id, and the same as the kernels want them. */
record ThrowingHeads(List<Head> list, HeadArrays arrays) {

    /** A head too weak to reach anything is kept with a radius that reaches no cell. */
    private static final double NO_RADIUS_M = 1e-9;

    /** @param phase heads of a later one are left out */
    static ThrowingHeads of(Site site, CoverageParameters parameters, Phase phase) {
        List<Head> heads = site.yard().water().heads().stream()
                .filter(head -> head.sector().isPresent())
                .filter(head -> HeadPhases.of(head, site.yard()).compareTo(phase) <= 0)
                .toList();
        var arrays = new HeadArrays(heads.size());
        for (int i = 0; i < heads.size(); i++) {
            Head head = heads.get(i);
            HeadFamily family = site.catalog().head(head.family());
            Sector sector = head.sector().orElseThrow();
            WorkingHead working = parameters.working().get(head.id());
            Length radius = working == null ? sector.radius() : working.radius();
            Flow flow = working == null ? family.referenceFlow(head) : working.flow();
            arrays.place(i, sector.apex().xM(), sector.apex().yM());
            arrays.radius(i, Math.max(radius.metres(), NO_RADIUS_M));
            arrays.arcByBearing(
                    i, sector.arc().start().degrees(), sector.arc().sweep().degrees());
            arrays.profile(i, DepthCurve.of(site.catalog().profile(family.jet().profile())));
            if (radius.metres() > NO_RADIUS_M) {
                arrays.flow(i, flow.cubicMetresPerSecond());
            }
        }
        return new ThrowingHeads(heads, arrays);
    }

    boolean isEmpty() {
        return list.isEmpty();
    }
}
