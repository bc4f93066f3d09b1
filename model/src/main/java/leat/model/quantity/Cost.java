package leat.model.quantity;

import leat.model.fault.Require;
import org.joda.money.BigMoney;

/** A sum of money or a price, in its currency; a price may have parts of the smallest coin. */
public record Cost(BigMoney money) implements Figure {

    public Cost {
        Require.present("cost", "money", money);
    }

    @Override
    public double si() {
        return money.getAmount().doubleValue();
    }

    @Override
    public String toString() {
        return money.toString();
    }
}
