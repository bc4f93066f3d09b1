package leat.calc.budget;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import leat.calc.takeoff.MaterialLine;
import leat.calc.takeoff.StockPieces;
import leat.model.catalog.Price;
import leat.model.catalog.PriceUnit;
import leat.model.quantity.Ratio;
import org.joda.money.Money;

/** How much of a material is bought in the unit of its price. */
final class Buying {

    /** Absorbs the rounding of sums of lengths before a quantity is rounded up. */
    private static final double NOISE = 1e-9;

    private static final int DECIMALS = 2;

    private Buying() {}

    /** The line with its purchase, or without where the price is for something that is measured otherwise. */
    static BudgetLine line(MaterialLine material, Ratio waste, Price price) {
        Optional<BigDecimal> count = count(material, waste.value(), price.unit());
        if (count.isEmpty()) {
            String note = "its price is per " + price.unit().symbol() + ", which does not fit a "
                    + material.quantity().dimension().label();
            return new BudgetLine(material, waste, Optional.empty(), note);
        }
        Money amount = price.amount().multipliedBy(count.get()).toMoney(RoundingMode.HALF_EVEN);
        return new BudgetLine(material, waste, Optional.of(new Purchase(price, count.get(), amount)), "");
    }

    private static Optional<BigDecimal> count(MaterialLine material, double waste, PriceUnit unit) {
        if (unit.isStock()) {
            return material.stock().map(stock -> sticks(material, waste, stock));
        }
        if (unit.dimension() != material.quantity().dimension()) {
            return Optional.empty();
        }
        double inUnit = material.quantity().si() / unit.factor() * (1 + waste);
        return Optional.of(roundedUp(inUnit, unit == PriceUnit.EACH ? 0 : DECIMALS));
    }

    /** As many as the cut list takes, or as the length with its waste takes if that is more. */
    private static BigDecimal sticks(MaterialLine material, double waste, StockPieces stock) {
        double byLength = material.quantity().si() * (1 + waste) / stock.each().metres();
        return roundedUp(byLength, 0)
                .max(BigDecimal.valueOf((long) stock.count().value()));
    }

    private static BigDecimal roundedUp(double value, int decimals) {
        double scale = StrictMath.pow(10, decimals);
        return BigDecimal.valueOf((long) Math.ceil(value * scale - NOISE), decimals);
    }
}
