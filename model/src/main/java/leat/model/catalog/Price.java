package leat.model.catalog;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/**
 * What a material costs.
 *
 * @param key    of the material, as the takeoff names it
 * @param amount for one unit, at least 0; may have more decimals than the currency
 * @param source where the price was seen
 * @param date   when
 */
public record Price(String key, PriceUnit unit, BigMoney amount, String source, LocalDate date) {

    /** A price above this, or with more decimals than {@link #MOST_DECIMALS}, is a slip of the pen. */
    private static final BigDecimal MOST = new BigDecimal("1000000000");

    private static final int MOST_DECIMALS = 6;

    public Price {
        Require.name("price", "key", key);
        String thing = "price of " + key;
        Require.present(thing, "unit", unit);
        Require.present(thing, "price", amount);
        if (amount.isNegative() || amount.getAmount().compareTo(MOST) > 0 || amount.getScale() > MOST_DECIMALS) {
            throw notAPrice(thing, amount.getAmount().toPlainString());
        }
        Require.name(thing, "source", source);
        Require.present(thing, "date", date);
    }

    /**
     * The price as a file states it.
     *
     * @param amount   such as {@code 4.25}
     * @param currency code of ISO 4217, such as {@code USD}
     * @param date     as in ISO 8601, such as {@code 2026-03-31}
     * @throws InvalidValueException if one of them cannot be read so
     */
    public static Price of(String key, String unit, String amount, String currency, String source, String date) {
        Require.name("price", "key", key);
        String thing = "price of " + key;
        try {
            return new Price(
                    key,
                    PriceUnit.parse(unit),
                    BigMoney.of(currency(thing, currency), number(thing, amount)),
                    source,
                    LocalDate.parse(date));
        } catch (DateTimeException notADate) {
            throw new InvalidValueException(
                    thing, "date", "'" + date + "'", "a date as year-month-day, such as 2026-03-31");
        }
    }

    /** Code of its currency, such as {@code USD}. */
    public String currency() {
        return amount.getCurrencyUnit().getCode();
    }

    /** The amount in digits, such as {@code 4.25}. */
    public String digits() {
        return amount.getAmount().toPlainString();
    }

    private static CurrencyUnit currency(String thing, String code) {
        try {
            return CurrencyUnit.of(code);
        } catch (IllegalCurrencyException unknown) {
            throw new InvalidValueException(
                    thing, "currency", "'" + code + "'", "a code of three letters of ISO 4217, such as USD");
        }
    }

    private static BigDecimal number(String thing, String text) {
        if (!text.matches("[0-9]{1,12}([.][0-9]{1,12})?")) {
            throw notAPrice(thing, "'" + text + "'");
        }
        return new BigDecimal(text);
    }

    private static InvalidValueException notAPrice(String thing, String value) {
        return new InvalidValueException(
                thing,
                "price",
                value,
                "a number from 0 up in digits with at most " + MOST_DECIMALS + " decimals, such as 4.25");
    }
}
