package leat.calc.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.internal.cells.CellGrid;
import leat.calc.internal.cells.CellRuns;
import leat.calc.internal.cells.HeadArrays;
import leat.calc.internal.cells.Margins;
import leat.calc.internal.cells.ReachedCells;
import leat.calc.internal.cells.Rings;
import leat.calc.internal.cells.Segments;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Subject;
import leat.model.geometry.Bounds;
import leat.model.geometry.Point;
import leat.model.geometry.Region;
import leat.model.id.HeadId;
import leat.model.plan.Site;
import leat.model.quantity.Area;
import leat.model.quantity.Length;
import leat.model.site.Surface;
import leat.model.water.DripLine;
import leat.model.water.Head;

/** What heads throw where none should be, each head on a grid of its own around it, and heads that stand outside the lot. */
final class WastedWater {

    private static final int MOST_CELLS = 1_000_000;

    /** Corners of the lot are computed: a head set right on the boundary is not outside for a rounding. */
    private static final double ON_BOUNDARY_M = 1e-3;

    private final Site site;
    private final CoverageParameters parameters;
    private final ThrowingHeads heads;
    private final Optional<Region> lot;
    private final List<Surface> dry;
    private final SortedMap<HeadId, Area> byHead = new TreeMap<>();

    WastedWater(Site site, CoverageParameters parameters, ThrowingHeads heads) {
        this.site = site;
        this.parameters = parameters;
        this.heads = heads;
        lot = site.yard().terrain().lot();
        dry = site.yard().terrain().surfaces().stream()
                .filter(surface -> surface.kind().mustStayDry())
                .toList();
    }

    /** For the heads asked about so far. */
    SortedMap<HeadId, Area> byHead() {
        return byHead;
    }

    List<Finding> findings(Head head) {
        List<Finding> findings = new ArrayList<>();
        addPlace(findings, head);
        int index = heads.list().indexOf(head);
        if (index >= 0) {
            addThrown(findings, head, index);
        }
        return findings;
    }

    private void addThrown(List<Finding> findings, Head head, int index) {
        HeadArrays arrays = heads.arrays();
        double xM = arrays.xM(index);
        double yM = arrays.yM(index);
        Bounds around = new Bounds(xM, yM, xM, yM).grown(arrays.radiusM(index));
        CellGrid grid = CellGrid.over(around, parameters.cell().metres(), MOST_CELLS);
        var margins = new Margins(grid);
        var reached = new ReachedCells(grid, arrays);
        var cells = new CellRuns();
        double stripM = parameters.strip().metres();
        double wastedM2 = 0;
        for (Surface surface : dry) {
            if (meet(around, surface.region().bounds())) {
                margins.inside(Rings.of(surface.region()), stripM, cells);
                String advice = "turn the arc or shorten the radius so that it misses " + surface.id();
                wastedM2 += add(findings, "coverage.overspray", head, reached.areaM2(index, cells), advice);
            }
        }
        if (lot.isPresent()) {
            margins.outside(Rings.of(lot.get()), stripM, cells);
            String advice = "turn the arc or shorten the radius so that it stays within the lot";
            wastedM2 += add(findings, "coverage.outside", head, reached.areaM2(index, cells), advice);
        }
        if (wastedM2 > 0) {
            byHead.put(head.id(), new Area(wastedM2));
        }
    }

    private double add(List<Finding> findings, String ruleId, Head head, double areaM2, String advice) {
        Rule rule = site.rules().get(ruleId);
        Area area = new Area(areaM2);
        if (!rule.isKeptBy(area)) {
            findings.add(Finding.of(rule, Subject.of(head.id()), area, advice));
        }
        return areaM2;
    }

    private void addPlace(List<Finding> findings, Head head) {
        List<Point> places = head instanceof DripLine line ? line.path().points() : List.of(head.at());
        double outsideM = lot.map(region -> mostOutsideM(region, places)).orElse(0.0);
        Length outside = new Length(outsideM > ON_BOUNDARY_M ? outsideM : 0);
        Rule rule = site.rules().get("coverage.lot");
        if (!rule.isKeptBy(outside)) {
            findings.add(Finding.of(rule, Subject.of(head.id(), "at"), outside, "set it inside the lot"));
        }
    }

    private static double mostOutsideM(Region region, List<Point> places) {
        double[][] rings = Rings.of(region);
        return places.stream()
                .filter(place -> !region.contains(place))
                .mapToDouble(place -> Segments.distanceToBorderM(place.xM(), place.yM(), rings))
                .max()
                .orElse(0);
    }

    private static boolean meet(Bounds a, Bounds b) {
        return a.leastXM() <= b.mostXM()
                && b.leastXM() <= a.mostXM()
                && a.leastYM() <= b.mostYM()
                && b.leastYM() <= a.mostYM();
    }
}
