package leat.model.catalog;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import org.joda.money.CurrencyUnit;

/**
 * The prices that a yard is reckoned with, all in one currency.
 *
 * @param prices sorted by key, one for each
 */
public record PriceBook(List<Price> prices) {

    public static final PriceBook EMPTY = new PriceBook(List.of());

    public PriceBook {
        prices = Require.unique("price of", prices, Price::key);
        for (Price price : prices) {
            if (!price.currency().equals(prices.get(0).currency())) {
                throw new InvalidValueException(
                        "price of " + price.key(),
                        "currency",
                        price.currency(),
                        prices.get(0).currency() + ", as that of "
                                + prices.get(0).key());
            }
        }
    }

    /** Empty while there is no price. */
    public Optional<CurrencyUnit> currency() {
        return prices.stream().findFirst().map(price -> price.amount().getCurrencyUnit());
    }

    /** The price of that material, if it has one. */
    public Optional<Price> find(String key) {
        return prices.stream().filter(price -> price.key().equals(key)).findFirst();
    }

    /** The same book with these prices; one with a known key takes its place. */
    public PriceBook with(PriceBook more) {
        TreeMap<String, Price> all = new TreeMap<>();
        prices.forEach(price -> all.put(price.key(), price));
        more.prices.forEach(price -> all.put(price.key(), price));
        return new PriceBook(List.copyOf(all.values()));
    }
}
