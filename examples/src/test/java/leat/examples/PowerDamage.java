package leat.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.calc.assess.Assessment;
import leat.calc.budget.BudgetSum;
import leat.model.catalog.Costs;
import leat.model.catalog.Price;
import leat.model.catalog.PriceBook;
import leat.model.id.CableId;
import leat.model.id.ConduitId;
import leat.model.id.SurfaceId;
import leat.model.plan.Yard;
import leat.model.power.Conduit;
import leat.model.power.Controller;
import leat.model.power.Load;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.power.ValveCable;
import leat.model.power.WireGroup;
import org.joda.money.BigMoney;

/** Yards with one thing of the power or the prices spoilt. */
final class PowerDamage {

    private PowerDamage() {}

    /** A power cable with other conductors. */
    static Yard rewired(Yard yard, String cable, String size) {
        PowerSystem power = yard.power();
        List<PowerCable> cables = power.powerCables().stream()
                .map(one -> one.id().equals(new CableId(cable)) ? one.withConductor(Optional.of(size)) : one)
                .toList();
        return yard.withPower(
                power.with(power.circuits(), power.loads().toList(), power.conduits(), cables, power.valveCables()));
    }

    /** A conduit in which more wires lie already. */
    static Yard filled(Yard yard, String conduit, WireGroup wires) {
        PowerSystem power = yard.power();
        List<Conduit> conduits = power.conduits().stream()
                .map(one -> one.id().equals(new ConduitId(conduit)) ? filled(one, wires) : one)
                .toList();
        return yard.withPower(power.with(
                power.circuits(), power.loads().toList(), conduits, power.powerCables(), power.valveCables()));
    }

    private static Conduit filled(Conduit conduit, WireGroup wires) {
        List<WireGroup> occupied = new ArrayList<>(conduit.occupied());
        occupied.add(wires);
        return new Conduit(
                conduit.id(),
                conduit.route(),
                conduit.series(),
                conduit.size(),
                conduit.existing(),
                occupied,
                conduit.phase());
    }

    /** All valve wires pulled through that conduit as well. */
    static Yard valveWiresThrough(Yard yard, String conduit) {
        PowerSystem power = yard.power();
        List<ValveCable> cables = power.valveCables().stream()
                .map(one -> one.withConduits(List.of(new ConduitId(conduit))))
                .toList();
        return yard.withPower(
                power.with(power.circuits(), power.loads().toList(), power.conduits(), power.powerCables(), cables));
    }

    /** All controllers hung in that structure, as far as the record says; their places stay. */
    static Yard controllersIn(Yard yard, String structure) {
        PowerSystem power = yard.power();
        List<Load> loads = power.loads()
                .map(one -> one instanceof Controller controller ? in(controller, structure) : one)
                .toList();
        return yard.withPower(
                power.with(power.circuits(), loads, power.conduits(), power.powerCables(), power.valveCables()));
    }

    /** All controllers drawing ten times as much. */
    static Yard thirstierControllers(Yard yard) {
        PowerSystem power = yard.power();
        List<Load> loads = power.loads()
                .map(one -> one instanceof Controller controller ? thirstier(controller) : one)
                .toList();
        return yard.withPower(
                power.with(power.circuits(), loads, power.conduits(), power.powerCables(), power.valveCables()));
    }

    private static Controller thirstier(Controller one) {
        return new Controller(
                one.id(),
                one.at(),
                one.inside(),
                one.stations(),
                one.power().times(10),
                one.circuit(),
                one.phase(),
                one.ahead());
    }

    private static Controller in(Controller one, String structure) {
        return new Controller(
                one.id(),
                one.at(),
                Optional.of(new SurfaceId(structure)),
                one.stations(),
                one.power(),
                one.circuit(),
                one.phase(),
                one.ahead());
    }

    /** The price of one unit of that material in another figure. */
    static Yard priced(Yard yard, String material, String amount) {
        Costs costs = yard.costs();
        List<Price> prices = costs.prices().prices().stream()
                .map(one -> one.key().equals(material) ? priced(one, amount) : one)
                .toList();
        return yard.withCosts(
                new Costs(new PriceBook(prices), costs.waste(), costs.wasteByKind(), costs.tax(), costs.contingency()));
    }

    private static Price priced(Price one, String amount) {
        return new Price(
                one.key(),
                one.unit(),
                BigMoney.of(one.amount().getCurrencyUnit(), new BigDecimal(amount)),
                one.source(),
                one.date());
    }

    /** @param factor by which tax on goods and contingency raise what is bought */
    static void assertRisesWithThePriceOfSwingJoints(Example example, double factor) {
        Yard yard = example.yard();
        long joints = yard.water().heads().stream()
                .filter(head -> head.sector().isPresent())
                .count();
        BigMoney price = yard.costs().prices().find("swing joint").orElseThrow().amount();
        String dearer = price.plus(BigDecimal.ONE).getAmount().toPlainString();
        Assessment after = Example.assess(priced(yard, "swing joint", dearer));
        BudgetSum before = example.assessment().budget().total().orElseThrow();
        assertTrue(before.isComplete(), before::text);
        assertEquals(
                joints * factor,
                after.budget()
                        .total()
                        .orElseThrow()
                        .total()
                        .minus(before.total())
                        .getAmount()
                        .doubleValue(),
                0.02);
        assertEquals(example.assessment().findings(), after.findings());
    }
}
