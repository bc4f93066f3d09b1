package leat.calc.budget;

import java.math.BigDecimal;
import leat.model.catalog.Price;
import leat.model.fault.Require;
import org.joda.money.Money;

/**
 * What is bought of a material.
 *
 * @param count  of the price's unit, waste included: whole sticks, coils and counted goods; lengths and volumes rounded
 *               up to two decimals
 * @param amount count times price, rounded half to even to the smallest coin
 */
public record Purchase(Price price, BigDecimal count, Money amount) {

    public Purchase {
        Require.present("purchase", "price", price);
        Require.present("purchase", "count", count);
        Require.present("purchase", "amount", amount);
    }
}
