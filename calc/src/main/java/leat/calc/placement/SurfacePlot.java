package leat.calc.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import leat.calc.GroundLine;
import leat.calc.GroundLines;
import leat.calc.internal.cells.CellGrid;
import leat.calc.internal.cells.CellRuns;
import leat.calc.internal.cells.Covers;
import leat.calc.internal.cells.DepthCurve;
import leat.calc.internal.cells.HeadArrays;
import leat.calc.internal.cells.Margins;
import leat.calc.internal.cells.RegionRaster;
import leat.calc.internal.cells.Rings;
import leat.calc.placement.internal.Given;
import leat.calc.placement.internal.KeepOff;
import leat.calc.placement.internal.OpenGround;
import leat.calc.placement.internal.Plot;
import leat.model.catalog.HeadFamily;
import leat.model.geometry.Point;
import leat.model.geometry.Region;
import leat.model.geometry.Sector;
import leat.model.plan.Site;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.water.Head;

/** A surface as the kernels want it: what may be thrown on around it, and what given heads reach of it. */
record SurfacePlot(Plot plot, Given given) {

    private static final int MOST_CELLS = 4_000_000;

    static SurfacePlot of(
            Site site, PlacementParameters parameters, Surface surface, List<Head> heads, double farthestM) {
        List<Surface> all = site.yard().terrain().surfaces();
        CellGrid own =
                CellGrid.over(surface.region().bounds(), parameters.cell().metres(), MOST_CELLS);
        CellRuns ownCells = Covers.openCells(own, surface, all);
        CellGrid grown = own.grown((int) Math.ceil(farthestM / own.cellM()) + 1);
        CellRuns target = Covers.openCells(grown, surface, all);
        // Cells are judged by their centres: the strip is kept half a cell narrower than what coverage will allow.
        double stripM = Math.max(0, parameters.strip().metres() - own.cellM() / 2);
        var plot = new Plot(
                grown,
                OpenGround.rings(surface.region(), above(surface, all)),
                surface.isLawn() ? 2 : 1,
                target,
                free(grown, parameters, surface, all),
                dry(grown, stripM, site),
                keepOff(site));
        return new SurfacePlot(
                plot,
                Given.of(
                        own,
                        ownCells,
                        arrays(site, heads),
                        plot,
                        parameters.reserve().value()));
    }

    private static List<Region> above(Surface surface, List<Surface> all) {
        return all.stream()
                .filter(other -> Covers.isAbove(other, surface))
                .map(Surface::region)
                .toList();
    }

    private static CellRuns[] free(CellGrid grid, PlacementParameters parameters, Surface surface, List<Surface> all) {
        return all.stream()
                .filter(other -> !other.equals(surface))
                .filter(other -> !other.kind().mustStayDry())
                .filter(other -> parameters.throwOnBeds() || other.kind() != SurfaceKind.BED)
                .map(other -> {
                    var cells = new CellRuns();
                    new RegionRaster().rasterise(grid, Rings.of(other.region()), cells);
                    return cells;
                })
                .toArray(CellRuns[]::new);
    }

    private static CellRuns[] dry(CellGrid grid, double stripM, Site site) {
        var margins = new Margins(grid);
        List<CellRuns> dry = new ArrayList<>();
        for (Surface other : site.yard().terrain().surfaces()) {
            if (other.kind().mustStayDry()) {
                var cells = new CellRuns();
                margins.inside(Rings.of(other.region()), stripM, cells);
                dry.add(cells);
            }
        }
        site.yard().terrain().lot().ifPresent(lot -> {
            var cells = new CellRuns();
            margins.outside(Rings.of(lot), stripM, cells);
            dry.add(cells);
        });
        return dry.toArray(CellRuns[]::new);
    }

    private static KeepOff keepOff(Site site) {
        double nearM = site.rules().get("trench.hole").limit().si();
        List<GroundLine> lines = GroundLines.of(site.yard());
        return new KeepOff(
                lines.stream().map(line -> along(line, Point::xM)).toArray(double[][]::new),
                lines.stream().map(line -> along(line, Point::yM)).toArray(double[][]::new),
                lines.stream()
                        .mapToDouble(line -> nearM + line.doubt().metres())
                        .toArray());
    }

    private static double[] along(GroundLine line, ToDoubleFunction<Point> of) {
        return line.route().points().stream().mapToDouble(of).toArray();
    }

    private static HeadArrays arrays(Site site, List<Head> heads) {
        List<Head> throwing =
                heads.stream().filter(head -> head.sector().isPresent()).toList();
        var arrays = new HeadArrays(throwing.size());
        for (int i = 0; i < throwing.size(); i++) {
            Head head = throwing.get(i);
            Sector sector = head.sector().orElseThrow();
            HeadFamily family = site.catalog().head(head.family());
            arrays.place(i, sector.apex().xM(), sector.apex().yM());
            arrays.radius(i, sector.radius().metres());
            arrays.arcByBearing(
                    i, sector.arc().start().degrees(), sector.arc().sweep().degrees());
            arrays.profile(i, DepthCurve.of(site.catalog().profile(family.jet().profile())));
            arrays.flow(i, family.referenceFlow(head).cubicMetresPerSecond());
        }
        return arrays;
    }
}
