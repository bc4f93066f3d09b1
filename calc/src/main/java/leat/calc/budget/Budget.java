package leat.calc.budget;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.Progress;
import leat.calc.takeoff.MaterialLine;
import leat.model.catalog.Costs;
import leat.model.catalog.MaterialKind;
import leat.model.fault.InvalidValueException;
import leat.model.fault.UnfinishedException;
import leat.model.finding.Ledger;
import leat.model.finding.Status;
import leat.model.plan.Site;
import leat.model.quantity.Count;
import leat.model.quantity.Ratio;
import leat.model.site.Phase;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The calculation of what the materials cost. Money is reckoned in decimals, never in doubles. */
public final class Budget {

    private static final RoundingMode ROUNDING = RoundingMode.HALF_EVEN;

    private Budget() {}

    public static BudgetResult run(Site site, BudgetParameters parameters, Progress progress) {
        progress.at(0, "budget");
        Costs costs = site.yard().costs();
        List<BudgetLine> lines = new ArrayList<>();
        for (MaterialLine material : parameters.takeoff().lines()) {
            Optional<BudgetLine> line = line(material, costs);
            line.ifPresent(lines::add);
        }
        SortedMap<Phase, BudgetSum> sums = costs.prices()
                .currency()
                .map(currency -> sums(lines, costs, currency))
                .orElseGet(TreeMap::new);
        Status status =
                progress.stopped() ? Status.STOPPED : parameters.takeoff().status();
        return new BudgetResult(status, lines, sums);
    }

    /**
     * How a figure of the budget came about; its last line equals it to the smallest coin.
     *
     * @param figure {@code goods}, {@code labour}, {@code tax}, {@code contingency} or {@code total}, alone or followed by
     *     {@code now} or {@code later}; or the key of a material or its first words
     * @throws InvalidValueException if there is no such figure
     * @throws UnfinishedException if there is no budget, or the material has no price
     */
    public static Ledger why(Site site, BudgetParameters parameters, String figure) {
        return new BudgetLedger(
                        run(site, parameters, Progress.NONE), site.yard().costs())
                .of(figure);
    }

    /** Labour is reckoned only if it has a price; all else is missed. */
    private static Optional<BudgetLine> line(MaterialLine material, Costs costs) {
        Ratio waste = costs.wasteOf(material.kind());
        return costs.prices()
                .find(material.key())
                .map(price -> Buying.line(material, waste, price))
                .or(() -> material.kind() == MaterialKind.LABOUR
                        ? Optional.empty()
                        : Optional.of(new BudgetLine(material, waste, Optional.empty(), "no price")));
    }

    private static SortedMap<Phase, BudgetSum> sums(List<BudgetLine> lines, Costs costs, CurrencyUnit currency) {
        SortedMap<Phase, BudgetSum> sums = new TreeMap<>();
        for (Phase phase : Phase.values()) {
            List<BudgetLine> own = lines.stream()
                    .filter(line -> line.material().phase() == phase)
                    .toList();
            if (!own.isEmpty()) {
                sums.put(phase, sum(own, costs, currency));
            }
        }
        return sums;
    }

    private static BudgetSum sum(List<BudgetLine> lines, Costs costs, CurrencyUnit currency) {
        Money goods = Money.zero(currency);
        Money labour = Money.zero(currency);
        int missing = 0;
        for (BudgetLine line : lines) {
            Money amount = line.purchase().map(Purchase::amount).orElse(Money.zero(currency));
            missing += line.purchase().isEmpty() ? 1 : 0;
            if (line.material().kind() == MaterialKind.LABOUR) {
                labour = labour.plus(amount);
            } else {
                goods = goods.plus(amount);
            }
        }
        Money tax = share(goods, costs.tax());
        Money contingency = share(goods.plus(labour).plus(tax), costs.contingency());
        return new BudgetSum(goods, labour, tax, contingency, Count.of(missing));
    }

    private static Money share(Money of, Ratio share) {
        return of.multipliedBy(decimal(share), ROUNDING);
    }

    /** The decimal that was meant: 7 % is 0.07 and not the double nearest to it. */
    static BigDecimal decimal(Ratio share) {
        return new BigDecimal(share.value())
                .setScale(12, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
    }
}
