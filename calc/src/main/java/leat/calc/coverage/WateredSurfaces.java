package leat.calc.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.internal.cells.CellGrid;
import leat.calc.internal.cells.CellRuns;
import leat.calc.internal.cells.Covers;
import leat.calc.internal.cells.Evenness;
import leat.calc.internal.cells.Wetting;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Severity;
import leat.model.finding.Subject;
import leat.model.plan.Site;
import leat.model.quantity.Count;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Quantity;
import leat.model.quantity.Ratio;
import leat.model.site.Phase;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.site.Watering;

/** Measures lawns and beds that are watered by heads, and says where they fall short. */
final class WateredSurfaces {

    private static final int MOST_CELLS = 4_000_000;

    private final Site site;
    private final CoverageParameters parameters;
    private final SortedMap<Phase, ThrowingHeads> headsBy = new TreeMap<>();
    private final Evenness evenness = new Evenness();

    WateredSurfaces(Site site, CoverageParameters parameters) {
        this.site = site;
        this.parameters = parameters;
    }

    private ThrowingHeads heads(Phase phase) {
        return headsBy.computeIfAbsent(phase, key -> ThrowingHeads.of(site, parameters, key));
    }

    static List<Surface> of(Site site) {
        return site.yard().terrain().surfaces().stream()
                .filter(surface -> surface.watering() == Watering.HEADS)
                .filter(surface -> surface.kind() == SurfaceKind.LAWN || surface.kind() == SurfaceKind.BED)
                .toList();
    }

    SurfaceCoverage measure(Surface surface) {
        CellGrid grid =
                CellGrid.over(surface.region().bounds(), parameters.cell().metres(), MOST_CELLS);
        CellRuns cells = Covers.openCells(grid, surface, site.yard().terrain().surfaces());
        var wetting = new Wetting(grid, heads(surface.phase()).arrays());
        wetting.wetAll();
        evenness.measure(wetting, cells);
        double all = Math.max(1, evenness.cells());
        return new SurfaceCoverage(
                surface.id(),
                Count.of(surface.isLawn() ? 2 : 1),
                Ratio.of(evenness.cellsReachedByOne() / all),
                Ratio.of(evenness.cellsReachedByTwo() / all),
                Ratio.of(evenness.christiansen()),
                Ratio.of(evenness.lowQuarter()),
                new PrecipitationRate(evenness.meanRateMPerS()),
                WetCells.of(wetting, cells));
    }

    List<Finding> findings(Surface surface, SurfaceCoverage coverage) {
        List<Finding> findings = new ArrayList<>();
        Subject subject = Subject.of(surface.id());
        Rule reach = site.rules().get(surface.isLawn() ? "coverage.two" : "coverage.one");
        if (!reach.isKeptBy(coverage.reachedAsWanted())) {
            // Before the first head is placed the plan is not wrong but unfinished.
            boolean isBare = heads(surface.phase()).isEmpty();
            Severity severity = isBare ? Severity.NOTE : reach.severity();
            String advice = isBare
                    ? "place heads"
                    : "move heads closer, turn their arcs or give them more radius; the drawing of coverage shows where";
            findings.add(new Finding(reach, severity, subject, coverage.reachedAsWanted(), reach.limit(), advice));
        }
        if (coverage.mean().metresPerSecond() > 0) {
            addIfNotKept(
                    findings,
                    site.rules().get("coverage.uniformity"),
                    subject,
                    coverage.lowQuarter(),
                    "even out spacing and arcs, and keep to one family");
            addIntake(findings, surface, coverage);
        }
        return findings;
    }

    /** The soil's own intake, where it is known, takes the place of the round figure of the rule. */
    private void addIntake(List<Finding> findings, Surface surface, SurfaceCoverage coverage) {
        Rule rule = site.rules().get("coverage.intake");
        PrecipitationRate limit = surface.soil()
                .map(soil -> site.catalog().soil(soil).intake())
                .orElse(new PrecipitationRate(rule.limit().si()));
        if (coverage.mean().compareTo(limit) > 0) {
            findings.add(new Finding(
                    rule,
                    rule.severity(),
                    Subject.of(surface.id()),
                    coverage.mean(),
                    limit,
                    "run in short cycles with time to soak in between"));
        }
    }

    private static void addIfNotKept(
            List<Finding> findings, Rule rule, Subject subject, Quantity measured, String advice) {
        if (!rule.isKeptBy(measured)) {
            findings.add(Finding.of(rule, subject, measured, advice));
        }
    }
}
