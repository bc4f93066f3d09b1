package leat.calc.hydraulics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leat.model.finding.Citation;
import leat.model.finding.Ledger;
import leat.model.finding.Standing;
import leat.model.finding.Step;
import leat.model.finding.Subject;
import leat.model.id.BibId;
import leat.model.id.HeadId;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;

/** Writes the ledgers of what a zone draws, and of what a pipe carries while most runs through it. */
final class LoadExplanation {

    static final List<String> OF_PIPES = List.of("flow", "velocity", "loss");

    private static final Citation SUM = new Citation("sum of the lines above", Standing.RECOMPUTED);
    private static final Citation CONTINUITY =
            new Citation("continuity: the same flow through every section", Standing.PUBLISHED);

    private final Explanation lines;
    private final WaterPath path;
    private final Id running;

    /** @param running the zone or the hose bib whose path it is */
    LoadExplanation(Explanation lines, WaterPath path, Id running) {
        this.lines = lines;
        this.path = path;
        this.running = running;
    }

    /** The flow of the zone: what all of its heads draw at the pressures that they get. */
    Ledger zone() {
        List<Step> steps = drawn(WaterPath.OUTLET);
        steps.add(new Step("flow of the zone", "sum", List.of(), path.inflow(), SUM));
        return new Ledger(Subject.of(running), "flow", steps);
    }

    Ledger pipe(PipeId pipe, String figure) {
        WaterPath.PipePlaces places = path.pipes().get(pipe);
        if (places == null) {
            throw new AssertionError(pipe);
        }
        List<Step> steps = new ArrayList<>();
        if (figure.equals("loss")) {
            places.after().forEach(place -> steps.add(lossOf(place)));
            steps.add(new Step(
                    "loss along the pipe" + whileRunning(),
                    "sum",
                    List.of(),
                    path.load(places).loss(),
                    SUM));
            return new Ledger(Subject.of(pipe), figure, steps);
        }
        int first = places.after().get(0);
        steps.addAll(drawn(first));
        steps.add(new Step(
                "flow in the pipe" + whileRunning(),
                "sum",
                List.of(),
                path.load(places).flow(),
                SUM));
        if (figure.equals("velocity")) {
            List<Step.Input> inputs = List.of(
                    new Step.Input("Q", path.flow(first)),
                    new Step.Input("d", new Length(path.link(first).boreM())));
            steps.add(new Step(
                    "velocity in the pipe",
                    "Q / (π · d²/4)",
                    inputs,
                    path.load(places).velocity(),
                    CONTINUITY));
        }
        return new Ledger(Subject.of(pipe), figure, steps);
    }

    private String whileRunning() {
        return " while " + running.title() + (running instanceof BibId ? " is open" : " runs");
    }

    /** What each outlet behind a place draws. */
    private List<Step> drawn(int place) {
        List<Step> steps = new ArrayList<>();
        if (running instanceof BibId) {
            steps.add(new Step(
                    "drawn by " + running.title(),
                    "as stated",
                    List.of(),
                    path.flow(path.last()),
                    Citation.OF_THE_YARD));
        }
        for (Map.Entry<HeadId, Integer> head : path.heads().entrySet()) {
            if (liesBehind(head.getValue(), place)) {
                steps.add(lines.flow(head.getKey(), head.getValue()));
            }
        }
        return steps;
    }

    private boolean liesBehind(int place, int before) {
        int here = place;
        while (here > before) { // a place is numbered after all that feed it
            here = path.link(here).parent();
        }
        return here == before;
    }

    private Step lossOf(int place) {
        Step step = lines.loss(place);
        Pressure lost = ((Pressure) step.value()).times(-1);
        return new Step(step.text(), step.formula(), step.inputs(), lost, step.citation());
    }
}
