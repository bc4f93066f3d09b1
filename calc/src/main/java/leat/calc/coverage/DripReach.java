package leat.calc.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.calc.DripSpacing;
import leat.calc.HeadPhases;
import leat.calc.internal.cells.CellGrid;
import leat.calc.internal.cells.CellRuns;
import leat.calc.internal.cells.Covers;
import leat.calc.internal.cells.Segments;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Severity;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.plan.Site;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.site.Surface;
import leat.model.site.Watering;
import leat.model.water.Bubbler;
import leat.model.water.DripLine;
import leat.model.water.Head;

/** Whether surfaces that are watered by drip get water, and how much of them. */
final class DripReach {

    /** Beds are narrow and rows close: cells for them are no larger. */
    private static final Length MOST_CELL = Length.metres(0.1);

    private static final int MOST_CELLS = 1_000_000;

    private final Site site;
    private final Length cell;

    DripReach(Site site, CoverageParameters parameters) {
        this.site = site;
        cell = parameters.cell().compareTo(MOST_CELL) < 0 ? parameters.cell() : MOST_CELL;
    }

    static List<Surface> of(Site site) {
        return site.yard().terrain().surfaces().stream()
                .filter(surface -> surface.watering() == Watering.DRIP)
                .toList();
    }

    List<Finding> findings(Surface surface) {
        List<Head> heads = site.yard().water().heads().stream()
                .filter(head -> HeadPhases.of(head, site.yard()).compareTo(surface.phase()) <= 0)
                .toList();
        Ratio reached = reached(surface, heads);
        Rule wetted = site.rules().get("coverage.drip");
        if (wetted.isKeptBy(reached)) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        Rule dry = site.rules().get("coverage.dry");
        Count watering = Count.of(
                (int) heads.stream().filter(head -> lies(head, surface)).count());
        if (!dry.isKeptBy(watering)) {
            // Before the first head is placed the plan is not wrong but unfinished.
            Severity severity = heads.isEmpty() ? Severity.NOTE : dry.severity();
            String advice = "lay drip lines in it, plan the yard, or say that it is watered by heads or not at all";
            findings.add(new Finding(dry, severity, Subject.of(surface.id()), watering, dry.limit(), advice));
        } else {
            findings.add(Finding.of(
                    wetted,
                    Subject.of(surface.id()),
                    reached,
                    "lay more rows of drip line, or lay them through all of it"));
        }
        return findings;
    }

    private static boolean lies(Head head, Surface surface) {
        return head.sector().isEmpty() && spots(head).anyMatch(surface.region()::contains);
    }

    /** Where a head that does not throw lets water out: enough to tell which surface it is for. */
    private static Stream<Point> spots(Head head) {
        return head instanceof DripLine line
                ? Stream.concat(
                        line.path().points().stream(),
                        Stream.of(line.path().at(line.path().length().times(0.5))))
                : Stream.of(head.at());
    }

    /** Share of what is open of the surface that lies within half the usual distance of rows from a line, or within reach of a head. */
    private Ratio reached(Surface surface, List<Head> heads) {
        CellGrid grid = CellGrid.over(surface.region().bounds(), cell.metres(), MOST_CELLS);
        CellRuns open = Covers.openCells(grid, surface, site.yard().terrain().surfaces());
        double lineReachM = DripSpacing.of(surface, site).metres() / 2;
        int reached = 0;
        for (int row = 0; row < grid.rows(); row++) {
            for (int run = open.firstRun(row); run < open.firstRun(row + 1); run++) {
                for (int column = open.from(run); column < open.end(run); column++) {
                    Point spot = new Point(grid.centreXM(column), grid.centreYM(row));
                    reached += heads.stream().anyMatch(head -> reaches(head, spot, lineReachM)) ? 1 : 0;
                }
            }
        }
        return Ratio.of((double) reached / Math.max(1, open.cells()));
    }

    private boolean reaches(Head head, Point spot, double lineReachM) {
        if (head instanceof DripLine line) {
            return isNear(line.path().points(), spot, lineReachM);
        }
        if (head instanceof Bubbler bubbler) {
            double radiusM =
                    site.catalog().head(bubbler.family()).jet().radius().metres();
            return bubbler.at().distanceM(spot) <= radiusM;
        }
        return head.sector().filter(sector -> sector.contains(spot)).isPresent();
    }

    private static boolean isNear(List<Point> path, Point spot, double reachM) {
        for (int i = 1; i < path.size(); i++) {
            Point from = path.get(i - 1);
            Point to = path.get(i);
            if (Segments.distanceM(spot.xM(), spot.yM(), from.xM(), from.yM(), to.xM(), to.yM()) <= reachM) {
                return true;
            }
        }
        return false;
    }
}
