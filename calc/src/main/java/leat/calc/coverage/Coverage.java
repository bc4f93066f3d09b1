package leat.calc.coverage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.Progress;
import leat.model.finding.Finding;
import leat.model.finding.Status;
import leat.model.id.SurfaceId;
import leat.model.plan.Site;
import leat.model.site.Phase;
import leat.model.site.Surface;
import leat.model.water.Head;

/** How well heads cover lawns and watered beds. A calculation: measures and changes nothing. */
public final class Coverage {

    private Coverage() {}

    /**
     * All heads of the yard, as if all ran for the same time. What is watered now must do with the heads of now: those of
     * later count only for what comes later, but wherever they throw where none should be.
     */
    public static CoverageResult run(Site site, CoverageParameters parameters, Progress progress) {
        List<Surface> watered = WateredSurfaces.of(site);
        ThrowingHeads heads = ThrowingHeads.of(site, parameters, Phase.LATER);
        SortedMap<SurfaceId, SurfaceCoverage> surfaces = new TreeMap<>();
        List<Finding> findings = new ArrayList<>();
        var measuring = new WateredSurfaces(site, parameters);
        for (Surface surface : watered) {
            if (progress.stopped()) {
                return new CoverageResult(Status.STOPPED, surfaces, Collections.emptySortedMap(), findings);
            }
            SurfaceCoverage coverage = measuring.measure(surface);
            surfaces.put(surface.id(), coverage);
            findings.addAll(measuring.findings(surface, coverage));
            progress.at((double) surfaces.size() / (watered.size() + 1), "coverage of " + surface.id());
        }
        var drip = new DripReach(site, parameters);
        for (Surface surface : DripReach.of(site)) {
            findings.addAll(drip.findings(surface));
        }
        var waste = new WastedWater(site, parameters, heads);
        for (Head head : site.yard().water().heads()) {
            findings.addAll(waste.findings(head));
        }
        progress.at(1, "coverage");
        return new CoverageResult(Status.COMPLETE, surfaces, waste.byHead(), findings);
    }
}
