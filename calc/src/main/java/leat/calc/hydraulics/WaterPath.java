package leat.calc.hydraulics;

import java.util.List;
import java.util.SortedMap;
import leat.calc.hydraulics.internal.TreeSolver;
import leat.calc.internal.pipes.PipeLaw;
import leat.model.catalog.HeadFamily;
import leat.model.catalog.PressureRange;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.plan.Site;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;
import leat.model.quantity.Velocity;
import leat.model.water.Head;
import leat.model.water.Source;

/** The tree of everything between a source and the outlets of a zone, or a bib; ready to be solved again and again. */
final class WaterPath {

    /** Place 1: behind the source's own curve. */
    static final int OUTLET = 1;

    private final Source source;
    private final double sourceElevationM;
    private final List<Link> links;
    private final SortedMap<HeadId, Integer> heads;
    private final SortedMap<PipeId, PipePlaces> pipes;
    private final int last;
    private final TreeSolver solver;

    /**
     * @param first place that the pipe's water starts from, behind devices at its inlet
     * @param after places behind each piece of it, in the direction of the flow; at least one
     */
    record PipePlaces(int first, List<Integer> after) {}

    WaterPath(PathDraft draft, int last) {
        source = draft.source();
        sourceElevationM = draft.sourceElevationM();
        links = List.copyOf(draft.links());
        heads = draft.heads();
        pipes = draft.pipes();
        this.last = last;
        int[] parent = new int[links.size() + 1];
        for (int place = 1; place < parent.length; place++) {
            parent[place] = link(place).parent();
        }
        solver = new TreeSolver(parent);
        for (int place = 1; place < parent.length; place++) {
            Link link = link(place);
            solver.setPipe(place, link.friction(), link.minor());
            solver.setElevation(place, link.elevationM());
            if (link.isDevice()) {
                solver.setDevice(place, link.thresholdM(), link.deviceK(), link.deviceN());
            }
        }
    }

    /** Sets the outlets of the heads as the catalogue has them. */
    void openHeads(Site site) {
        heads.forEach((id, place) -> {
            Head head = site.yard().water().head(id).orElseThrow();
            HeadFamily family = site.catalog().head(head.family());
            PressureRange range = family.pressure();
            double flow = family.referenceFlow(head).si();
            double exponent = family.jet().flowExponent();
            if (exponent == 0) {
                solver.setCompensatingOutlet(
                        place, flow, SourceLaw.metres(range.least().pascals()));
            } else {
                double referenceM = SourceLaw.metres(range.reference().pascals());
                solver.setOutlet(place, flow / StrictMath.pow(referenceM, exponent), exponent);
            }
        });
    }

    /** Sets a fixed flow at the end of the path. */
    void open(Flow drawn) {
        solver.setDemand(last, drawn.si());
    }

    /** Solves with the source's own pressure and that much more. Returns whether an answer was found. */
    boolean solve(Pressure more) {
        double headM =
                sourceElevationM + SourceLaw.metres(source.staticPressure().pascals() + more.pascals());
        return solver.solve(headM) == TreeSolver.Status.CONVERGED;
    }

    Source source() {
        return source;
    }

    double sourceElevationM() {
        return sourceElevationM;
    }

    /** The link that feeds a place. */
    Link link(int place) {
        return links.get(place - 1);
    }

    SortedMap<HeadId, Integer> heads() {
        return heads;
    }

    SortedMap<PipeId, PipePlaces> pipes() {
        return pipes;
    }

    int last() {
        return last;
    }

    Flow flow(int place) {
        return new Flow(solver.flowM3PerS(place));
    }

    Flow outletFlow(int place) {
        return new Flow(solver.outletM3PerS(place));
    }

    Flow inflow() {
        return new Flow(solver.inflowM3PerS());
    }

    Pressure pressure(int place) {
        return new Pressure(solver.pressureM(place) * PipeLaw.PASCALS_PER_M);
    }

    /** Lost in the link that feeds a place. */
    Pressure loss(int place) {
        return new Pressure(solver.lossM(place) * PipeLaw.PASCALS_PER_M);
    }

    PipeLoad load(PipePlaces places) {
        int firstPiece = places.after().get(0);
        Flow flow = flow(firstPiece);
        double lossPa = 0;
        for (int place : places.after()) {
            lossPa += loss(place).pascals();
        }
        double velocity = PipeLaw.velocityMPerS(flow.si(), link(firstPiece).boreM());
        return new PipeLoad(flow, new Velocity(velocity), new Pressure(lossPa), pressure(places.first()));
    }
}
