package leat.calc.wiring;

import static leat.calc.wiring.Steps.input;
import static leat.calc.wiring.Steps.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.calc.wiring.internal.ConduitFill;
import leat.calc.wiring.internal.CopperWire;
import leat.model.catalog.BuriedAs;
import leat.model.catalog.ConductorSpec;
import leat.model.catalog.ConduitSpec;
import leat.model.catalog.ElectricalTables;
import leat.model.catalog.InsulationColumn;
import leat.model.catalog.Rules;
import leat.model.finding.Citation;
import leat.model.finding.Rule;
import leat.model.finding.Standing;
import leat.model.power.CodeFamily;
import leat.model.power.Load;
import leat.model.power.Luminaire;
import leat.model.power.Outlet;
import leat.model.quantity.Area;
import leat.model.quantity.Count;
import leat.model.quantity.Current;
import leat.model.quantity.Length;
import leat.model.quantity.Power;
import leat.model.quantity.Resistance;
import leat.model.quantity.Voltage;
import leat.model.quantity.Volume;

/**
 * IEC 60364 and the national codes that follow it, with national practice where it is silent. All lies in the ground, in
 * a duct or as cable, insulated with PVC for 70 °C; the tables hold at 20 °C around it.
 */
public final class Iec60364 extends SharedCode implements ElectricalCode {

    private static final int WORKING_CELSIUS = 70;

    /** Three phases share one way back: the drop between two of them is √3 of that in one conductor, not twice it. */
    private static final double THREE_PHASES_FACTOR = Math.sqrt(3);

    private static final Current PROTECTED_OUTLET = new Current(32);
    private static final Voltage EXTRA_LOW = new Voltage(50);

    /** Up to this area the protective conductor is as thick as the others; from there it stays so for a while. */
    private static final Area SAME_UP_TO = new Area(16e-6);

    /** Beyond this area it is half as thick as the others. */
    private static final Area STAYS_UP_TO = new Area(35e-6);

    /** Half of an area must not be missed for a rounded last digit. */
    private static final double PRINTED_RATIO = 0.999;

    private static final Citation DROP_TABLE = new Citation(
            "BS 7671 appendix 4, two-core copper, 70 °C; resistances of IEC 60228 where it has no row",
            Standing.PUBLISHED);
    private static final Citation PROTECTIVE = new Citation("IEC 60364-5-54, table 54.2", Standing.FROM_MEMORY);

    Iec60364(ElectricalTables tables, Rules rules) {
        super(CodeFamily.IEC_60364, tables, rules, "power.iec.");
    }

    @Override
    public String title() {
        return "IEC 60364";
    }

    @Override
    String leastPowerSize() {
        return "1.5"; // IEC 60364-5-52 table 52.2, power and lighting
    }

    @Override
    public Answer<Current> loadCurrent(Power power, Voltage voltage, int liveWires) {
        boolean threePhases = liveWires == 3;
        Current current = new Current(power.si() / (voltage.si() * (threePhases ? THREE_PHASES_FACTOR : 1)));
        return Answer.of(
                current,
                step(
                        "current of the load",
                        threePhases ? "I = P / (√3 · U)" : "I = P / U",
                        current,
                        Steps.OHM,
                        input("P", power),
                        input("U", voltage)));
    }

    @Override
    public Answer<Current> ampacity(ConductorSpec conductor, Laying laying) {
        return corrected(conductor, WORKING_CELSIUS, laying);
    }

    @Override
    Resistance warmPerMetre(ConductorSpec conductor) {
        return new Resistance(CopperWire.atCelsius(
                conductor.metal().perMetre().si(), conductor.metal().celsius(), WORKING_CELSIUS));
    }

    @Override
    public Answer<Resistance> loopResistance(ConductorSpec conductor, Length oneWay, int liveWires) {
        Resistance perMetre = conductor
                .column(WORKING_CELSIUS)
                .flatMap(InsulationColumn::loopPerMetre)
                .orElseGet(() -> warmPerMetre(conductor).times(2));
        boolean threePhases = liveWires == 3;
        Resistance loop = perMetre.times(oneWay.si() * (threePhases ? THREE_PHASES_FACTOR / 2 : 1));
        return Answer.of(
                loop,
                step(
                        "drop for each ampere, " + conductor.label() + " at " + WORKING_CELSIUS + " °C",
                        threePhases ? "R = √3/2 · l · r" : "R = l · r",
                        loop,
                        DROP_TABLE,
                        input("l", oneWay),
                        perLength("r, out and back", perMetre)));
    }

    /** Counted from the origin to the load, so a part of the way must keep the limit of the whole. */
    @Override
    public Rule dropLimit(DropSpan span, boolean lighting) {
        return rule(lighting ? "drop.light" : "drop.other");
    }

    /** It goes by the conductors that are laid, so it grows with them of itself. */
    @Override
    public Answer<ConductorSpec> groundingConductor(Current breaker, ConductorSpec least, ConductorSpec chosen) {
        Area area = chosen.metal().area();
        double neededM2 = area.compareTo(STAYS_UP_TO) <= 0 ? Math.min(area.si(), SAME_UP_TO.si()) : area.si() / 2;
        ConductorSpec size = powerConductors().stream()
                .filter(one -> one.metal().area().si() >= neededM2 * PRINTED_RATIO)
                .findFirst()
                .orElse(chosen);
        return Answer.of(
                size,
                step(
                        "protective conductor: " + size.label(),
                        "S up to 16 mm², 16 mm² up to 35 mm², S/2 beyond",
                        size.metal().area(),
                        PROTECTIVE,
                        input("S", area)));
    }

    @Override
    public Rule fillLimit(int count) {
        return rule("fill");
    }

    @Override
    public Answer<Count> mostEqual(ConduitSpec conduit, ConductorSpec conductor) {
        Rule limit = fillLimit(1);
        double share = limit.limit().si();
        Count most = Count.of(
                ConduitFill.mostEqual(conduit.area().si(), conductor.insulated().si(), share, share, share, 1));
        return Answer.of(
                most,
                step(
                        "most " + conductor.label() + " in " + conduit.size() + " " + conduit.series(),
                        "n = share · A₀ / A",
                        most,
                        limit.citation(),
                        input("share", limit.limit()),
                        input("A₀", conduit.area()),
                        input("A", conductor.insulated())));
    }

    @Override
    List<BuriedAs> columns(Burial burial) {
        List<BuriedAs> columns = new ArrayList<>(List.of(burial.as()));
        if (burial.voltage().compareTo(EXTRA_LOW) <= 0) {
            columns.add(BuriedAs.CONTROL);
        }
        return columns;
    }

    /** Outlets outdoors up to 32 A, and luminaires of dwellings. */
    @Override
    public Optional<Rule> groundFault(Load load, Voltage voltage, Current breaker) {
        boolean outlet = load instanceof Outlet && breaker.compareTo(PROTECTED_OUTLET) <= 0;
        return outlet || load instanceof Luminaire ? Optional.of(rule("ground-fault")) : Optional.empty();
    }

    @Override
    public Optional<Answer<Volume>> boxVolume(BoxContents contents) {
        return Optional.empty();
    }
}
