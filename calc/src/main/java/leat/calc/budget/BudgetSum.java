package leat.calc.budget;

import leat.model.fault.Require;
import leat.model.quantity.Count;
import org.joda.money.Money;

/**
 * The sums of one phase, or of all.
 *
 * @param goods        all lines with a price but labour
 * @param labour       lines of labour
 * @param tax          on the goods, rounded half to even
 * @param contingency  on goods, labour and tax, rounded half to even
 * @param withoutPrice lines that are in none of the sums
 */
public record BudgetSum(Money goods, Money labour, Money tax, Money contingency, Count withoutPrice) {

    public BudgetSum {
        Require.present("budget sum", "goods", goods);
        Require.present("budget sum", "labour", labour);
        Require.present("budget sum", "tax", tax);
        Require.present("budget sum", "contingency", contingency);
        Require.present("budget sum", "withoutPrice", withoutPrice);
    }

    public Money total() {
        return goods.plus(labour).plus(tax).plus(contingency);
    }

    public boolean isComplete() {
        return withoutPrice.equals(Count.ZERO);
    }

    /** The total as a person should read it: with a word about what it leaves out. */
    public String text() {
        int missing = (int) withoutPrice.value();
        String lines = missing == 1 ? "1 line without a price" : missing + " lines without a price";
        return total() + (isComplete() ? "" : ", incomplete: " + lines);
    }

    BudgetSum plus(BudgetSum other) {
        return new BudgetSum(
                goods.plus(other.goods),
                labour.plus(other.labour),
                tax.plus(other.tax),
                contingency.plus(other.contingency),
                withoutPrice.plus(other.withoutPrice));
    }
}
