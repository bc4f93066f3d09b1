package leat.calc.digging;

import java.util.ArrayList;
import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.finding.Citation;
import leat.model.finding.Ledger;
import leat.model.finding.Standing;
import leat.model.finding.Step;
import leat.model.finding.Subject;
import leat.model.plan.Site;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Quantity;
import leat.model.quantity.Volume;
import leat.model.trench.TrenchSegment;

/** Tells step by step how a figure of a trench came about. */
final class DigLedger {

    private static final List<String> FIGURES = List.of("length", "width", "volume", "loose", "bedding", "backfill");

    private static final Citation GEOMETRY = new Citation("geometry, docs/theory/digging.md", Standing.RECOMPUTED);

    private final TrenchSegment trench;
    private final Dug dug;
    private final Site site;
    private final DiggingParameters parameters;
    private final List<Step> steps = new ArrayList<>();

    DigLedger(TrenchSegment trench, Dug dug, Site site, DiggingParameters parameters) {
        this.trench = trench;
        this.dug = dug;
        this.site = site;
        this.parameters = parameters;
    }

    Ledger of(String figure) {
        switch (figure) {
            case "length" -> addLength();
            case "width" -> addWidth();
            case "volume" -> addVolume();
            case "loose" -> addLoose();
            case "bedding" -> addBedding();
            case "backfill" -> addBackfill();
            default ->
                throw new InvalidValueException(
                        "why",
                        "figure",
                        "'" + figure + "'",
                        String.join(", ", FIGURES) + Nearest.hint(figure, FIGURES));
        }
        return new Ledger(Subject.of(trench.id()), figure, steps);
    }

    private void addLength() {
        step("level length on the plan", "sum of the pieces", new Length(dug.lengthM), GEOMETRY);
        step("length along the finished grade", "sum of √(step² + rise²)", new Length(dug.slopingM()), GEOMETRY);
    }

    private void addWidth() {
        List<Arrangement.Layer> layers = dug.arrangement.layers();
        for (int i = 0; i < layers.size(); i++) {
            Arrangement.Layer layer = layers.get(i);
            List<Step.Input> inputs = new ArrayList<>();
            layer.things().forEach(one -> inputs.add(input(one.id().name(), new Length(one.outsideM()))));
            inputs.add(input("room", new Length(dug.spacing.roomM())));
            inputs.add(input("between equals", new Length(dug.spacing.besideM())));
            inputs.add(input("between power and others", new Length(dug.spacing.apartM())));
            steps.add(new Step(
                    "layer " + (i + 1) + " of " + layers.size() + ", from the bottom",
                    "diameters + distances between them + room",
                    inputs,
                    new Length(layer.widthM(dug.spacing)),
                    site.rules().get("digging.room").citation()));
        }
        step(
                "what a " + dug.tool.name() + " digs",
                "rule " + dug.tool.rule().id(),
                new Length(dug.tool.widthM()),
                dug.tool.rule().citation());
        step("width of the trench", "the widest of these", new Length(dug.widthM), GEOMETRY);
    }

    private void addVolume() {
        addWidth();
        steps.add(new Step(
                "earth as it lies",
                "(b + s·d)·d·L",
                List.of(
                        input("b", new Length(dug.widthM)),
                        input("s", dug.sideSlope),
                        input("d", new Length(dug.depthM)),
                        input("L", new Length(dug.lengthM))),
                new Volume(dug.bankM3()),
                GEOMETRY));
    }

    private void addLoose() {
        addVolume();
        steps.add(new Step(
                "loose earth, from " + dug.earth().label(),
                "bank·(1 + swell)",
                List.of(input("swell", dug.swell())),
                new Volume(dug.looseM3()),
                parameters.swell().isPresent() ? Citation.OF_THE_YARD : Earth.SOURCE));
    }

    private void addBedding() {
        addWidth();
        steps.add(new Step(
                "bed around what lies in it, layer by layer",
                "L·(b·(below + D + above) − Σ π·D²/4)",
                List.of(
                        input("L", new Length(dug.lengthM)),
                        input("b", new Length(dug.widthM)),
                        input("bed", new Length(dug.arrangement.bedM())),
                        input("layers", Count.of(dug.arrangement.layers().size()))),
                new Volume(dug.beddingM3()),
                site.rules().get("digging.bed").citation()));
    }

    private void addBackfill() {
        addVolume();
        steps.add(new Step(
                "earth that goes back, tamped",
                "bank − bed − things",
                List.of(input("bed", new Volume(dug.beddingM3())), input("things", new Volume(dug.thingsM3()))),
                new Volume(dug.backfillM3()),
                GEOMETRY));
    }

    private void step(String text, String formula, Quantity value, Citation citation) {
        steps.add(new Step(text, formula, List.of(), value, citation));
    }

    private static Step.Input input(String name, Quantity value) {
        return new Step.Input(name, value);
    }
}
