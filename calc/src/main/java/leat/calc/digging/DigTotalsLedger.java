package leat.calc.digging;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
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
import leat.model.site.Phase;
import leat.model.trench.TrenchSegment;

/** Tells how the figures of all trenches together came about. */
final class DigTotalsLedger {

    static final List<String> FIGURES = List.of(
            "length",
            "by hand",
            "volume",
            "loose",
            "bedding",
            "backfill",
            "left over",
            "loads",
            "saved length",
            "saved volume");

    private static final Citation SUM = new Citation("sum of the lines above", Standing.RECOMPUTED);
    private static final Citation DIGGING = new Citation("docs/theory/digging.md", Standing.RECOMPUTED);

    private final Site site;
    private final DiggingParameters parameters;
    private final LaidThings laid;
    private final DigSums sums = new DigSums();
    private final List<Step> steps = new ArrayList<>();

    DigTotalsLedger(Site site, DiggingParameters parameters) {
        this.site = site;
        this.parameters = parameters;
        laid = new LaidThings(site, parameters);
    }

    Ledger of(String figure) {
        String word = figure.strip();
        for (Phase phase : Phase.values()) {
            String ending = " " + phase.name().toLowerCase(Locale.ROOT);
            if (word.endsWith(ending)) {
                String rest = word.substring(0, word.length() - ending.length());
                add(
                        rest,
                        figure,
                        site.yard().trenches().stream()
                                .filter(trench -> trench.phase() == phase)
                                .toList());
                return new Ledger(Subject.yard(), "digging, " + figure, steps);
            }
        }
        add(word, figure, site.yard().trenches());
        return new Ledger(Subject.yard(), "digging, " + figure, steps);
    }

    private void add(String word, String asked, List<TrenchSegment> trenches) {
        switch (word) {
            case "length" ->
                each(trenches, "length on the ground", "why(trench, \"length\")", dug -> new Length(dug.slopingM()));
            case "by hand" ->
                each(
                        trenches.stream().filter(TrenchSegment::byHand).toList(),
                        "dug by hand",
                        "length on the ground",
                        dug -> new Length(dug.slopingM()));
            case "volume" -> each(trenches, "earth as it lies", "(b + s·d)·d·L", dug -> new Volume(dug.bankM3()));
            case "loose" -> each(trenches, "loose earth", "bank·(1 + swell)", dug -> new Volume(dug.looseM3()));
            case "bedding" -> each(trenches, "bed", "why(trench, \"bedding\")", dug -> new Volume(dug.beddingM3()));
            case "backfill" ->
                each(trenches, "earth that goes back", "bank - bed - things", dug -> new Volume(dug.backfillM3()));
            case "left over", "loads" ->
                each(
                        trenches,
                        "loose earth that is over",
                        "loose - (1 + swell)·backfill / tamped",
                        dug -> new Volume(dug.leftOverM3()));
            case "saved length" ->
                trenches.forEach(trench -> {
                    Dug dug = dug(trench);
                    steps.add(new Step(
                            trench.id().name() + ", length on the plan",
                            "level length; counted once for each thing in it if all lay apart",
                            List.of(new Step.Input("things in it", Count.of(dug.thingsCount()))),
                            new Length(dug.lengthM),
                            DIGGING));
                });
            case "saved volume" -> each(trenches, "earth as it lies", "(b + s·d)·d·L", dug -> new Volume(dug.bankM3()));
            default ->
                throw new InvalidValueException(
                        "why",
                        "figure of digging",
                        "'" + asked + "'",
                        String.join(", ", FIGURES) + Nearest.hint(word, FIGURES));
        }
        trenches.forEach(trench -> {
            Dug dug = dug(trench);
            sums.add(trench, dug, dug.separateM3(site));
        });
        addSum(word);
    }

    private Dug dug(TrenchSegment trench) {
        return new Dug(trench, laid.in(trench), site, parameters);
    }

    private void each(List<TrenchSegment> trenches, String text, String formula, Function<Dug, Quantity> figure) {
        for (TrenchSegment trench : trenches) {
            steps.add(
                    new Step(trench.id().name() + ", " + text, formula, List.of(), figure.apply(dug(trench)), DIGGING));
        }
    }

    private void addSum(String word) {
        DigTotals totals = sums.totals(parameters.load());
        switch (word) {
            case "length" -> sum("length of all trenches on the ground", totals.onGround());
            case "by hand" -> sum("length that is dug by hand", totals.byHand());
            case "volume" -> sum("earth as it lies, in all", totals.bank());
            case "loose" -> sum("loose earth in all", totals.loose());
            case "bedding" -> sum("bed in all", totals.bedding());
            case "backfill" -> sum("earth that goes back, in all", totals.backfill());
            case "saved length" -> addSavedLength(totals);
            case "saved volume" -> addSavedVolume(totals);
            default -> addLeftOver(word, totals);
        }
    }

    private void addLeftOver(String word, DigTotals totals) {
        sum("loose earth that is over, in all", totals.leftOver());
        if (word.equals("loads")) {
            steps.add(new Step(
                    "loads to cart away",
                    "left over / load, rounded up",
                    List.of(new Step.Input("left over", totals.leftOver()), new Step.Input("load", parameters.load())),
                    totals.loads(),
                    DIGGING));
        }
    }

    private void addSavedLength(DigTotals totals) {
        sum("length of the trenches as they are shared", totals.onPlan());
        DigSaving saving = sums.saving();
        steps.add(new Step(
                "length if each thing had a trench of its own",
                "Σ length · things in it",
                List.of(),
                saving.separate(),
                DIGGING));
        steps.add(new Step(
                "share of that length that is saved",
                "1 - shared / apart",
                List.of(new Step.Input("shared", totals.onPlan()), new Step.Input("apart", saving.separate())),
                saving.ofLength(),
                DIGGING));
    }

    private void addSavedVolume(DigTotals totals) {
        sum("earth of the trenches as they are shared", totals.bank());
        DigSaving saving = sums.saving();
        steps.add(new Step(
                "earth if each thing had a trench of its own, as deep and wide as it asks alone",
                "Σ b·d·L",
                List.of(),
                saving.separateBank(),
                DIGGING));
        steps.add(new Step(
                "share of that earth that is saved",
                "1 - shared / apart",
                List.of(new Step.Input("shared", totals.bank()), new Step.Input("apart", saving.separateBank())),
                saving.ofVolume(),
                DIGGING));
    }

    private void sum(String text, Quantity value) {
        steps.add(new Step(text, "sum", List.of(), value, SUM));
    }
}
