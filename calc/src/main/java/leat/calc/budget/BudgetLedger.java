package leat.calc.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import leat.calc.takeoff.MaterialLine;
import leat.calc.takeoff.StockPieces;
import leat.model.catalog.Costs;
import leat.model.catalog.MaterialKind;
import leat.model.catalog.Price;
import leat.model.catalog.PriceUnit;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.fault.UnfinishedException;
import leat.model.finding.Citation;
import leat.model.finding.Ledger;
import leat.model.finding.Standing;
import leat.model.finding.Step;
import leat.model.finding.Subject;
import leat.model.quantity.Cost;
import leat.model.quantity.Figure;
import leat.model.site.Phase;
import org.joda.money.Money;

/** Tells how a sum of the budget came about, or what one material costs. */
final class BudgetLedger {

    static final List<String> FIGURES = List.of("goods", "labour", "tax", "contingency", "total");

    private static final Citation SUM = new Citation("sum of the lines above", Standing.RECOMPUTED);
    private static final Citation COUNTED = new Citation("counted on the plan", Standing.RECOMPUTED);
    private static final Citation ROUNDED =
            new Citation("rounded half to even, docs/theory/takeoff.md", Standing.RECOMPUTED);

    private static final Citation BUYING = new Citation("docs/theory/takeoff.md", Standing.RECOMPUTED);

    private final BudgetResult result;
    private final Costs costs;
    private final List<Step> steps = new ArrayList<>();

    BudgetLedger(BudgetResult result, Costs costs) {
        this.result = result;
        this.costs = costs;
    }

    Ledger of(String figure) {
        if (result.byPhase().isEmpty()) {
            throw new UnfinishedException(List.of("there is no budget: no price is stated"));
        }
        String asked = figure.strip();
        if (FIGURES.contains(asked)) {
            addAllPhases(asked);
        } else if (phaseOf(asked).isPresent()) {
            Phase phase = phaseOf(asked).get();
            addSum(asked.substring(0, asked.lastIndexOf(' ')), phase, sum(phase));
        } else {
            addMaterial(asked);
        }
        return new Ledger(Subject.yard(), "budget, " + asked, steps);
    }

    /** The phase at the end of {@code tax later}. */
    private static Optional<Phase> phaseOf(String asked) {
        for (Phase phase : Phase.values()) {
            String ending = " " + word(phase);
            if (asked.endsWith(ending) && FIGURES.contains(asked.substring(0, asked.length() - ending.length()))) {
                return Optional.of(phase);
            }
        }
        return Optional.empty();
    }

    private static String word(Phase phase) {
        return phase.name().toLowerCase(Locale.ROOT);
    }

    private BudgetSum sum(Phase phase) {
        BudgetSum sum = result.byPhase().get(phase);
        if (sum == null) {
            throw new InvalidValueException("why", "phase of the budget", word(phase), "a phase that has lines");
        }
        return sum;
    }

    private void addAllPhases(String figure) {
        SortedMap<Phase, BudgetSum> sums = result.byPhase();
        sums.forEach((phase, sum) -> addSum(figure, phase, sum));
        if (sums.size() > 1) {
            step(
                    figure + ", all phases",
                    "sum of the phases",
                    cost(of(figure, result.total().orElseThrow())),
                    SUM);
        }
    }

    private static Money of(String figure, BudgetSum sum) {
        return switch (figure) {
            case "goods" -> sum.goods();
            case "labour" -> sum.labour();
            case "tax" -> sum.tax();
            case "contingency" -> sum.contingency();
            case "total" -> sum.total();
            default -> throw new AssertionError(figure);
        };
    }

    private void addSum(String figure, Phase phase, BudgetSum sum) {
        Step.Input goods = new Step.Input("goods", cost(sum.goods()));
        Step.Input labour = new Step.Input("labour", cost(sum.labour()));
        Step.Input tax = new Step.Input("tax", cost(sum.tax()));
        String when = ", " + word(phase);
        switch (figure) {
            case "goods", "labour" -> addLines(figure, phase, sum);
            case "tax" ->
                step(
                        "tax on the goods" + when,
                        "rate · goods",
                        cost(sum.tax()),
                        ROUNDED,
                        new Step.Input("rate", costs.tax()),
                        goods);
            case "contingency" ->
                step(
                        "contingency" + when,
                        "share · (goods + labour + tax)",
                        cost(sum.contingency()),
                        ROUNDED,
                        new Step.Input("share", costs.contingency()),
                        goods,
                        labour,
                        tax);
            case "total" ->
                step(
                        "total" + when + missing(sum),
                        "goods + labour + tax + contingency",
                        cost(sum.total()),
                        SUM,
                        goods,
                        labour,
                        tax,
                        new Step.Input("contingency", cost(sum.contingency())));
            default -> throw new AssertionError(figure);
        }
    }

    private static String missing(BudgetSum sum) {
        int count = (int) sum.withoutPrice().value();
        return count == 0
                ? ""
                : ", without " + count + (count == 1 ? " line" : " lines") + " that no price is known for";
    }

    private void addLines(String figure, Phase phase, BudgetSum sum) {
        boolean labour = figure.equals("labour");
        for (BudgetLine line : result.lines()) {
            boolean counts =
                    line.material().phase() == phase && (line.material().kind() == MaterialKind.LABOUR) == labour;
            if (counts && line.purchase().isPresent()) {
                addAmount(line, line.purchase().get());
            }
        }
        step(figure + ", " + word(phase) + missing(sum), "sum", cost(of(figure, sum)), SUM);
    }

    private void addMaterial(String words) {
        List<BudgetLine> found = result.lines().stream()
                .filter(line -> line.material().isCalled(words))
                .toList();
        if (found.isEmpty()) {
            List<String> names = new ArrayList<>(FIGURES);
            result.lines().forEach(line -> names.add(line.material().key()));
            throw new InvalidValueException(
                    "why",
                    "figure of the budget",
                    "'" + words + "'",
                    String.join(", ", FIGURES) + ", alone or followed by now or later, or the key of a material"
                            + Nearest.hint(words, names));
        }
        Optional<Money> sum = Optional.empty();
        for (BudgetLine line : found) {
            Purchase purchase = line.purchase()
                    .orElseThrow(() -> new UnfinishedException(
                            List.of("material " + line.material().key() + ": " + line.note())));
            addNeed(line, purchase);
            addAmount(line, purchase);
            sum = sum.map(purchase.amount()::plus).or(() -> Optional.of(purchase.amount()));
        }
        if (found.size() > 1) {
            step(words + " in all", "sum of the amounts", cost(sum.orElseThrow()), SUM);
        }
    }

    private void addNeed(BudgetLine line, Purchase purchase) {
        MaterialLine material = line.material();
        step(
                material.key() + ", " + word(material.phase()) + ", needed",
                "why(\"materials\", \"" + material.key() + "\")",
                material.quantity(),
                COUNTED);
        List<Step.Input> inputs = new ArrayList<>();
        inputs.add(new Step.Input("needed", material.quantity()));
        inputs.add(new Step.Input("waste", line.waste()));
        String formula = "needed · (1 + waste), rounded up";
        if (purchase.price().unit().isStock() && material.stock().isPresent()) {
            StockPieces stock = material.stock().get();
            formula = "the more of needed · (1 + waste) / length, rounded up, and what the cutting list takes";
            inputs.add(new Step.Input("length", stock.each()));
            inputs.add(new Step.Input("cutting list", stock.count()));
        }
        steps.add(new Step(
                "bought, by the " + purchase.price().unit().symbol(), formula, inputs, bought(purchase), BUYING));
    }

    private static Figure bought(Purchase purchase) {
        PriceUnit unit = purchase.price().unit();
        return unit.dimension().of(purchase.count().doubleValue() * unit.factor());
    }

    private void addAmount(BudgetLine line, Purchase purchase) {
        Price price = purchase.price();
        step(
                line.material().key() + ", " + word(line.material().phase()),
                "bought · price",
                cost(purchase.amount()),
                new Citation(price.source() + ", " + price.date(), Standing.STATED),
                new Step.Input("bought", bought(purchase)),
                new Step.Input("price of a " + price.unit().symbol(), new Cost(price.amount())));
    }

    private static Cost cost(Money money) {
        return new Cost(money.toBigMoney());
    }

    private void step(String text, String formula, Figure value, Citation citation, Step.Input... inputs) {
        steps.add(new Step(text, formula, List.of(inputs), value, citation));
    }
}
