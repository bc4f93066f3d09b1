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

    private static final List<String> FIGURES =
            List.of("length", "width", "depth", "cover", "volume", "loose", "bedding", "backfill");

    private static final String COVER = "cover ";

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
        if (figure.startsWith(COVER)) {
            addCover(figure.substring(COVER.length()));
            return new Ledger(Subject.of(trench.id()), figure, steps);
        }
        switch (figure) {
            case "length" -> addLength();
            case "width" -> addWidth();
            case "depth" -> addDepth();
            case "volume" -> addVolume();
            case "loose" -> addLoose();
            case "bedding" -> addBedding();
            case "backfill" -> addBackfill();
            default ->
                throw new InvalidValueException(
                        "why",
                        "figure",
                        "'" + figure + "'",
                        String.join(", ", FIGURES) + " (of a thing, as in 'cover main')"
                                + Nearest.hint(figure, FIGURES));
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

    /** The planner digs as deep as the thing asks that wants to lie deepest; a yard may state a depth of its own. */
    private void addDepth() {
        for (Laid one : dug.things()) {
            steps.add(new Step(
                    "where the underside of " + one.id().name() + " may lie at the highest",
                    "least cover + diameter",
                    List.of(
                            input("least cover", new Length(one.coverM())),
                            input("diameter", new Length(one.outsideM()))),
                    new Length(one.reachM()),
                    GEOMETRY));
        }
        steps.add(new Step(
                "depth of the trench, from finished grade to its bottom",
                "as planned or stated; the deepest of these and the bed below it fit",
                List.of(input("bed", new Length(dug.arrangement.bedM()))),
                trench.depth(),
                new Citation("the plan", Standing.RECOMPUTED)));
    }

    private void addCover(String thing) {
        List<LaidDepth> laid = dug.arrangement.depths();
        LaidDepth one = laid.stream()
                .filter(each -> each.id().name().equals(thing))
                .findFirst()
                .orElseThrow(() -> notLaid(thing, laid));
        Arrangement.Layer layer = dug.arrangement.layers().get((int) one.layer().value() - 1);
        Length bottom = new Length(layer.bottomM());
        steps.add(underside((int) one.layer().value(), layer));
        steps.add(new Step(
                "cover of " + thing + ", from finished grade to its top",
                "underside - diameter; rules ask for the least cover",
                List.of(
                        input("underside", bottom),
                        input("diameter", one.outside()),
                        input("least cover", one.wanted())),
                one.cover(),
                GEOMETRY));
    }

    /** An upper layer lies as far above the thickest thing below it as power must stay from other things. */
    private Step underside(int number, Arrangement.Layer layer) {
        String text = "depth of the underside of layer " + number + ", counted from the bottom";
        if (number == 1) {
            return new Step(
                    text,
                    "depth - bed",
                    List.of(input("depth", trench.depth()), input("bed", new Length(dug.arrangement.bedM()))),
                    new Length(layer.bottomM()),
                    site.rules().get("digging.bed").citation());
        }
        Arrangement.Layer below = dug.arrangement.layers().get(number - 2);
        return new Step(
                text,
                "underside of the layer below - thickest thing in it - distance kept",
                List.of(
                        input("underside of the layer below", new Length(below.bottomM())),
                        input("thickest thing in it", new Length(below.thickestM())),
                        input("distance kept", new Length(below.bottomM() - below.thickestM() - layer.bottomM()))),
                new Length(layer.bottomM()),
                site.rules().get("digging.room").citation());
    }

    private static InvalidValueException notLaid(String thing, List<LaidDepth> laid) {
        List<String> names = laid.stream().map(one -> one.id().name()).toList();
        return new InvalidValueException(
                "why",
                "cover of",
                "'" + thing + "'",
                "one of " + String.join(", ", names) + Nearest.hint(thing, names));
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
