package leat.calc.wiring;

import static leat.calc.wiring.Steps.input;
import static leat.calc.wiring.Steps.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.calc.wiring.internal.BoxFill;
import leat.calc.wiring.internal.ConduitFill;
import leat.model.catalog.BuriedAs;
import leat.model.catalog.ConductorSpec;
import leat.model.catalog.ConduitSpec;
import leat.model.catalog.ElectricalTables;
import leat.model.catalog.GroundingStep;
import leat.model.catalog.Rules;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Citation;
import leat.model.finding.Rule;
import leat.model.finding.Standing;
import leat.model.finding.Step;
import leat.model.power.CodeFamily;
import leat.model.power.Load;
import leat.model.power.Outlet;
import leat.model.power.WireGroup;
import leat.model.power.WiringMethod;
import leat.model.quantity.Area;
import leat.model.quantity.Count;
import leat.model.quantity.Current;
import leat.model.quantity.Length;
import leat.model.quantity.Power;
import leat.model.quantity.Resistance;
import leat.model.quantity.Voltage;
import leat.model.quantity.Volume;

/**
 * NFPA 70 (National Electrical Code), editions 2014 to 2023 as far as public reprints show them. In conduit lies THWN-2,
 * insulated for 90 °C; a cable for laying in the ground counts with its column for 60 °C (340.80).
 */
public final class Nfpa70 extends SharedCode implements ElectricalCode {

    private static final double METRES_PER_FOOT = 0.3048;
    private static final int IN_CONDUIT_CELSIUS = 90;
    private static final int CABLE_CELSIUS = 60;

    /** Chapter 9, note 7: a count that comes to 0.8 and more is rounded up. */
    private static final double ROUND_UP_FRACTION = 0.8;

    /** Areas are printed with four digits: 16,511 circular mils ask for 8 AWG of 16,510. */
    private static final double PRINTED_RATIO = 0.999;

    /** Where a branch circuit counts as protected for the sake of its cover (table 300.5, column 4). */
    private static final Voltage PROTECTED_VOLTAGE = new Voltage(120);

    private static final Current PROTECTED_BREAKER = new Current(20);
    private static final Voltage CONTROL_VOLTAGE = new Voltage(30);

    private static final Citation TERMINALS = new Citation("NEC 110.14(C)(1)", Standing.FROM_MEMORY);
    private static final Citation TABLE_8 = new Citation("NEC ch. 9 table 8, uncoated copper", Standing.PUBLISHED);
    private static final Citation ENLARGED = new Citation("NEC 250.122(B)", Standing.PUBLISHED);
    private static final Citation NOT_LARGER = new Citation("NEC 250.122(A)", Standing.FROM_MEMORY);

    Nfpa70(ElectricalTables tables, Rules rules) {
        super(CodeFamily.NFPA_70, tables, rules, "power.");
    }

    @Override
    public String title() {
        return "NFPA 70 (National Electrical Code)";
    }

    @Override
    String leastPowerSize() {
        return "14"; // table 310.5: the least size for circuits
    }

    /** Both poles carry the whole current where they are balanced, so the way counts out and back. */
    @Override
    public Answer<Current> loadCurrent(Power power, Voltage voltage, int liveWires) {
        Current current = new Current(power.si() / voltage.si());
        return Answer.of(
                current,
                step("current of the load", "I = P / U", current, Steps.OHM, input("P", power), input("U", voltage)));
    }

    @Override
    public Answer<Current> ampacity(ConductorSpec conductor, Laying laying) {
        boolean cable = laying.method() == WiringMethod.BURIED_CABLE;
        Answer<Current> corrected = corrected(conductor, cable ? CABLE_CELSIUS : IN_CONDUIT_CELSIUS, laying);
        Current terminal = conductor.ampacity(laying.terminalCelsius());
        Current allowed = terminal.compareTo(corrected.value()) < 0 ? terminal : corrected.value();
        return corrected.then(
                allowed,
                step(
                        "no more than terminals for " + laying.terminalCelsius() + " °C bear",
                        "min(I, I of the terminals)",
                        allowed,
                        TERMINALS,
                        input("I", corrected.value()),
                        input("I of the terminals", terminal)));
    }

    @Override
    Resistance warmPerMetre(ConductorSpec conductor) {
        return conductor.metal().perMetre();
    }

    /** As table 8 prints it. */
    @Override
    Step.Input perLength(String symbol, Resistance perMetre) {
        return input(symbol + ", of 1000 ft", perMetre.times(1_000 * METRES_PER_FOOT));
    }

    @Override
    public Answer<Resistance> loopResistance(ConductorSpec conductor, Length oneWay, int liveWires) {
        Resistance perMetre = warmPerMetre(conductor);
        Resistance loop = perMetre.times(2 * oneWay.si());
        return Answer.of(
                loop,
                step(
                        "resistance out and back, " + conductor.label() + " at "
                                + conductor.metal().celsius() + " °C",
                        "R = 2 · l · r",
                        loop,
                        TABLE_8,
                        input("l", oneWay),
                        perLength("r", perMetre)));
    }

    @Override
    public Rule dropLimit(DropSpan span, boolean lighting) {
        return switch (span) {
            case BRANCH -> rule("drop.branch");
            case FEEDER -> rule("drop.feeder");
            case TOTAL -> rule("drop.total");
        };
    }

    /** A conductor that was enlarged enlarges the grounding conductor in proportion; larger than itself it need not be. */
    @Override
    public Answer<ConductorSpec> groundingConductor(Current breaker, ConductorSpec least, ConductorSpec chosen) {
        GroundingStep row = tables().grounding().stream()
                .filter(one -> one.upTo().compareTo(breaker) >= 0)
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        "grounding conductor", "breaker", breaker.toString(), "within the table, 1,200 A at most"));
        ConductorSpec base = conductor(row.copper());
        Answer<ConductorSpec> answer =
                Answer.of(base, Steps.chosen("grounding conductor behind " + breaker, base, row.citation()));
        double enlarged = chosen.metal().area().si() / least.metal().area().si();
        if (enlarged > 1) {
            Area needed = base.metal().area().times(enlarged);
            ConductorSpec larger = conductors().stream()
                    .filter(one -> one.metal().area().si() >= needed.si() * PRINTED_RATIO)
                    .findFirst()
                    .orElse(chosen);
            answer = answer.then(
                            larger,
                            step(
                                    "enlarged as the conductors are",
                                    "A = A₀ · A of the conductors / A that is enough",
                                    needed,
                                    ENLARGED,
                                    input("A₀", base.metal().area()),
                                    input("A of the conductors", chosen.metal().area()),
                                    input("A that is enough", least.metal().area())))
                    .then(larger, Steps.chosen("next size", larger, ENLARGED));
        }
        return answer.value().metal().area().compareTo(chosen.metal().area()) > 0
                ? answer.then(chosen, Steps.chosen("no larger than the conductors", chosen, NOT_LARGER))
                : answer;
    }

    @Override
    public Rule fillLimit(int count) {
        return rule(count == 1 ? "fill.one" : count == 2 ? "fill.two" : "fill.more");
    }

    @Override
    public Answer<Count> mostEqual(ConduitSpec conduit, ConductorSpec conductor) {
        Count most = Count.of(ConduitFill.mostEqual(
                conduit.area().si(),
                conductor.insulated().si(),
                fillLimit(1).limit().si(),
                fillLimit(2).limit().si(),
                fillLimit(3).limit().si(),
                ROUND_UP_FRACTION));
        Rule limit = fillLimit((int) most.si());
        return Answer.of(
                most,
                step(
                        "most " + conductor.label() + " in " + conduit.size() + " " + conduit.series(),
                        "n = share · A₀ / A, rounded up from 0.8",
                        most,
                        limit.citation(),
                        input("share", limit.limit()),
                        input("A₀", conduit.area()),
                        input("A", conductor.insulated())));
    }

    @Override
    List<BuriedAs> columns(Burial burial) {
        List<BuriedAs> columns = new ArrayList<>(List.of(burial.as()));
        boolean small = burial.voltage().compareTo(PROTECTED_VOLTAGE) <= 0
                && burial.breaker().compareTo(PROTECTED_BREAKER) <= 0;
        if (small && burial.groundFault()) {
            columns.add(BuriedAs.PROTECTED_BRANCH);
        }
        if (burial.voltage().compareTo(CONTROL_VOLTAGE) <= 0) {
            columns.add(BuriedAs.CONTROL);
        }
        return columns;
    }

    /** Outlets outdoors; luminaires and what is joined for good are exempt or left to the electrician. */
    @Override
    public Optional<Rule> groundFault(Load load, Voltage voltage, Current breaker) {
        return load instanceof Outlet ? Optional.of(rule("ground-fault")) : Optional.empty();
    }

    @Override
    public Optional<Answer<Volume>> boxVolume(BoxContents contents) {
        double conductorsM3 = 0;
        double largestM3 = 0;
        List<Step> steps = new ArrayList<>();
        for (WireGroup group : contents.conductors()) {
            ConductorSpec conductor = conductor(group.size());
            Volume each = conductor
                    .boxRoom()
                    .orElseThrow(() -> new InvalidValueException(
                            "box", "conductors", conductor.label(), "one that table 314.16(B) lists, 18 to 6 AWG"));
            steps.add(Steps.read(
                    "room of one " + conductor.label(), each, boxLimit().citation()));
            conductorsM3 += each.si() * group.count();
            largestM3 = Math.max(largestM3, each.si());
        }
        Volume needed = new Volume(BoxFill.neededM3(
                conductorsM3, largestM3, contents.groundings(), contents.devices(), contents.clamps()));
        steps.add(step(
                "room in the box",
                "V = Σ n · v + v of the largest · (2 · devices + clamps + grounding)",
                needed,
                boxLimit().citation(),
                input("Σ n · v", new Volume(conductorsM3)),
                input("v of the largest", new Volume(largestM3)),
                input("devices", contents.devices()),
                input("clamps", contents.clamps() ? 1 : 0),
                input("grounding conductors", contents.groundings())));
        return Optional.of(new Answer<>(needed, steps));
    }
}
