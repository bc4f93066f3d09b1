package leat.calc.budget;

import static leat.model.plan.Parts.budget;
import static leat.model.plan.Parts.percent;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.calc.Progress;
import leat.calc.takeoff.MaterialLine;
import leat.calc.takeoff.MaterialUse;
import leat.calc.takeoff.StockPieces;
import leat.calc.takeoff.TakeoffResult;
import leat.document.StandingData;
import leat.model.catalog.MaterialKind;
import leat.model.catalog.Price;
import leat.model.catalog.PriceBook;
import leat.model.finding.Status;
import leat.model.finding.Subject;
import leat.model.plan.BudgetPart;
import leat.model.plan.Parts;
import leat.model.plan.Yard;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Quantity;
import leat.model.quantity.Volume;
import leat.model.site.Phase;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class BudgetTest {

    private static final MaterialLine TEES = line("tee 1 in PVC", MaterialKind.FITTING, Count.of(14), Phase.NOW);

    /** Source: by hand: 14 at 1.19 are 16.66, 7 % of it 1.1662, 10 % of 17.83 are 1.783. */
    @Tag("reference")
    @Test
    void taxAndContingencyAreReckonedOnEachOtherAndRounded() {
        BudgetResult result = run(
                budget().prices(book("tee 1 in PVC", "each", "1.19"))
                        .tax(percent(7))
                        .contingency(percent(10)),
                TEES);
        BudgetSum sum = result.total().orElseThrow();
        assertEquals("USD 16.66", sum.goods().toString());
        assertEquals("USD 1.17", sum.tax().toString());
        assertEquals("USD 1.78", sum.contingency().toString());
        assertEquals("USD 19.61", sum.text());
    }

    /** Source: rule of rounding half to even (IEEE 754, ISO 80000-1 annex B): 0.125 is 0.12, 0.375 is 0.38. */
    @Tag("reference")
    @Test
    void halfACentGoesToTheEvenOne() {
        MaterialLine one = line("cap", MaterialKind.FITTING, Count.of(1), Phase.NOW);
        assertEquals("USD 0.12", amount(run(budget().prices(book("cap", "each", "0.125")), one)));
        assertEquals("USD 0.38", amount(run(budget().prices(book("cap", "each", "0.375")), one)));
        assertEquals("JPY 12", amount(run(budget().prices(bookIn("JPY", "cap", "each", "12.5")), one)));
    }

    /** Source: record ex-waste, common practice: 235 ft and 10 % waste are 13 sticks of 20 ft. */
    @Tag("reference")
    @Test
    void wasteMayTakeMoreSticksThanTheCutList() {
        MaterialLine pipe = new MaterialLine(
                "pipe",
                MaterialKind.PIPE,
                "pipe",
                Length.feet(235),
                Phase.NOW,
                Optional.of(new StockPieces(Length.feet(20), Count.of(12))),
                use(Length.feet(235)));
        BudgetPart waste = budget().waste(percent(10));
        assertEquals("13", count(run(waste.prices(book("pipe", "stick", "9")), pipe)));
        assertEquals("12", count(run(budget().prices(book("pipe", "stick", "9")), pipe)));
        assertEquals("258.50", count(run(waste.prices(book("pipe", "ft", "0.5")), pipe)));
        assertEquals("78.80", count(run(waste.prices(book("pipe", "m", "1.5")), pipe)), "78.7908 m");
    }

    /** Source: record ex-concrete, geometry: 120 ft2, 4 in deep, are 1.4815 yd3. */
    @Tag("reference")
    @Test
    void volumesAreBoughtByTheCubicYard() {
        MaterialLine bedding =
                line("bedding", MaterialKind.BEDDING, Volume.cubicMetres(40 * 0.028316846592), Phase.NOW);
        BudgetResult result = run(budget().prices(book("bedding", "yd3", "100")), bedding);
        assertEquals("1.49", count(result));
        assertEquals("USD 149.00", amount(result));
    }

    @Tag("law")
    @Test
    void whatHasNoPriceStaysAndTheTotalSaysSo() {
        MaterialLine caps = line("cap 1 in PVC", MaterialKind.FITTING, Count.of(2), Phase.LATER);
        BudgetResult result = run(budget().prices(book("tee 1 in PVC", "each", "1")), TEES, caps);
        assertEquals(2, result.lines().size());
        assertEquals(
                List.of("cap 1 in PVC"),
                result.withoutPrice().stream().map(one -> one.material().key()).toList());
        assertEquals(
                "USD 14.00, incomplete: 1 line without a price",
                result.total().orElseThrow().text());
        assertTrue(result.byPhase().get(Phase.NOW).isComplete());
        assertFalse(result.byPhase().get(Phase.LATER).isComplete());
        assertEquals(Optional.empty(), run(budget(), TEES).total());
    }

    @Tag("law")
    @Test
    void aPriceForSomethingElseCountsAsNone() {
        BudgetResult result = run(budget().prices(book("tee 1 in PVC", "ft", "1")), TEES);
        assertEquals(
                "its price is per ft, which does not fit a count",
                result.lines().get(0).note());
        assertEquals(1, result.withoutPrice().size());
    }

    @Tag("law")
    @Test
    void labourIsThereOnlyWithAPrice() {
        MaterialLine digging = line("trench dug by hand", MaterialKind.LABOUR, Length.feet(100), Phase.NOW);
        BudgetPart tees = budget().prices(book("tee 1 in PVC", "each", "1")).tax(percent(10));
        assertEquals(1, run(tees, TEES, digging).lines().size());
        BudgetSum sum = run(tees.prices(book("trench dug by hand", "ft", "3")), digging)
                .total()
                .orElseThrow();
        assertEquals("USD 300.00", sum.labour().toString());
        assertEquals("USD 0.00", sum.tax().toString(), "labour is not taxed here");
    }

    private static String amount(BudgetResult result) {
        return result.lines().get(0).purchase().orElseThrow().amount().toString();
    }

    private static String count(BudgetResult result) {
        return result.lines().get(0).purchase().orElseThrow().count().toString();
    }

    private static PriceBook book(String key, String unit, String amount) {
        return bookIn("USD", key, unit, amount);
    }

    private static PriceBook bookIn(String currency, String key, String unit, String amount) {
        return new PriceBook(List.of(Price.of(key, unit, amount, currency, "invented", "2026-03-31")));
    }

    private static MaterialLine line(String key, MaterialKind kind, Quantity quantity, Phase phase) {
        return new MaterialLine(key, kind, key, quantity, phase, Optional.empty(), use(quantity));
    }

    private static List<MaterialUse> use(Quantity quantity) {
        return List.of(new MaterialUse(Subject.yard(), "here", quantity));
    }

    private static BudgetResult run(BudgetPart part, MaterialLine... lines) {
        Yard yard = Parts.yard("Plot").with(part);
        TakeoffResult takeoff = new TakeoffResult(Status.COMPLETE, new ArrayList<>(List.of(lines)), List.of());
        return Budget.run(StandingData.load(Yard.EDITION).siteOf(yard), BudgetParameters.of(takeoff), Progress.NONE);
    }
}
