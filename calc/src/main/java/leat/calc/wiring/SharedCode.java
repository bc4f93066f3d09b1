package leat.calc.wiring;

import static leat.calc.wiring.Steps.input;
import static leat.calc.wiring.Steps.step;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leat.calc.wiring.internal.ValveWires;
import leat.model.catalog.AmpacityFactor;
import leat.model.catalog.BreakerRating;
import leat.model.catalog.BurialCover;
import leat.model.catalog.BuriedAs;
import leat.model.catalog.BuriedUnder;
import leat.model.catalog.CableSpec;
import leat.model.catalog.ConductorSpec;
import leat.model.catalog.ConduitSpec;
import leat.model.catalog.ElectricalTables;
import leat.model.catalog.Rules;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Citation;
import leat.model.finding.Rule;
import leat.model.finding.Standing;
import leat.model.power.CodeFamily;
import leat.model.quantity.Area;
import leat.model.quantity.Current;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.Resistance;
import leat.model.quantity.Voltage;
import leat.model.site.SurfaceKind;

/** What both families answer alike, each from its own rows of the tables and its own rules. */
abstract sealed class SharedCode permits Nfpa70, Iec60364 {

    /** The rows of the cover table that paving may belong to, as nobody says how thick it is and what drives on it. */
    private static final List<BuriedUnder> PAVING = List.of(BuriedUnder.OPEN_GROUND, BuriedUnder.DRIVEWAY);

    private final CodeFamily family;
    private final ElectricalTables tables;
    private final Rules rules;
    private final String prefix;

    /** @param prefix of the ids of its rules */
    SharedCode(CodeFamily family, ElectricalTables tables, Rules rules, String prefix) {
        this.family = family;
        this.tables = tables;
        this.rules = rules;
        this.prefix = prefix;
    }

    public abstract Answer<Current> ampacity(ConductorSpec conductor, Laying laying);

    public abstract Rule fillLimit(int count);

    public abstract Answer<Resistance> loopResistance(ConductorSpec conductor, Length oneWay, int liveWires);

    /** The columns of the cover table that something may go by; the least cover of them counts. */
    abstract List<BuriedAs> columns(Burial burial);

    /** The least size that a circuit for power may have. */
    abstract String leastPowerSize();

    /** Resistance of one metre of a single conductor, as warm as it gets. */
    abstract Resistance warmPerMetre(ConductorSpec conductor);

    final ElectricalTables tables() {
        return tables;
    }

    final Rule rule(String name) {
        return rules.get(prefix + name);
    }

    public List<ConductorSpec> conductors() {
        return tables.conductors(family);
    }

    public ConductorSpec conductor(String size) {
        return tables.conductor(family, size);
    }

    public List<ConductorSpec> powerConductors() {
        Area least = conductor(leastPowerSize()).metal().area();
        return conductors().stream()
                .filter(one -> one.metal().area().compareTo(least) >= 0)
                .toList();
    }

    public Optional<CableSpec> powerCable(ConductorSpec conductor, int liveWires) {
        return tables.powerCable(family, conductor.size(), liveWires);
    }

    public Optional<CableSpec> controlCable(ConductorSpec conductor, int strands) {
        return tables.controlCable(family, conductor.size(), strands);
    }

    public List<Current> breakers() {
        return tables.breakers().stream()
                .filter(one -> one.family() == family)
                .map(BreakerRating::rating)
                .toList();
    }

    public Rule continuousFactor() {
        return rule("continuous");
    }

    public Rule loadLimit() {
        return rule("load");
    }

    public Rule breakerLimit() {
        return rule("breaker");
    }

    public Rule groundingLimit() {
        return rule("grounding");
    }

    public Rule bendLimit() {
        return rule("bends");
    }

    public Rule underBuilding() {
        return rule("building");
    }

    public Rule groundFaultRating() {
        return rule("ground-fault.rating");
    }

    public Rule mixing() {
        return rule("mixed");
    }

    public List<ConductorSpec> lampConductors() {
        return conductors().stream().filter(one -> lampCable(one).isPresent()).toList();
    }

    public Optional<CableSpec> lampCable(ConductorSpec conductor) {
        return tables.lampCable(family, conductor.size());
    }

    public Answer<Current> lampAmpacity(ConductorSpec conductor) {
        return LampCables.ampacity(conductor);
    }

    public Answer<Resistance> lampLoopResistance(ConductorSpec conductor, Length oneWay) {
        return LampCables.loopResistance(conductor, oneWay);
    }

    public Rule lampVoltageLimit() {
        return rule("lamp.voltage");
    }

    public Rule lampCurrentLimit() {
        return rule("lamp.current");
    }

    public Rule lampWaterDistance() {
        return rule("lamp.water");
    }

    public Rule lampListing() {
        return rule("lamp.listed");
    }

    public List<Rule> atStructure() {
        return List.of(rule("disconnect"), rule("electrode"));
    }

    public Rule boxLimit() {
        return rules.get("power.box");
    }

    public Rule controlDropLimit() {
        return rules.get("power.control.drop");
    }

    public Answer<Current> mostBreaker(ConductorSpec conductor, Laying laying) {
        Answer<Current> ampacity = ampacity(conductor, laying);
        Current most = conductor
                .mostBreaker()
                .filter(limit -> limit.compareTo(ampacity.value()) < 0)
                .orElse(ampacity.value());
        Current breaker = breakers().stream()
                .filter(rating -> rating.compareTo(most) <= 0)
                .max(Comparator.naturalOrder())
                .orElse(Current.ZERO);
        return ampacity.then(
                breaker,
                step(
                        "greatest breaker for " + conductor.label(),
                        "largest rating ≤ min(I, limit of small conductors)",
                        breaker,
                        breakerLimit().citation(),
                        input("I", ampacity.value()),
                        input("limit", conductor.mostBreaker().orElse(ampacity.value()))));
    }

    public Optional<Answer<ConductorSpec>> conductorFor(Current breaker, Laying laying) {
        for (ConductorSpec conductor : powerConductors()) {
            Answer<Current> most = mostBreaker(conductor, laying);
            if (most.value().compareTo(breaker) >= 0) {
                return Optional.of(most.then(
                        conductor,
                        Steps.chosen("finest that may have a breaker of " + breaker, conductor, most.citation())));
            }
        }
        return Optional.empty();
    }

    public Answer<Voltage> drop(Current current, Length oneWay, int liveWires, ConductorSpec conductor) {
        return Steps.drop(current, loopResistance(conductor, oneWay, liveWires));
    }

    /** The factor of the table for that figure; a figure beyond the table is refused. */
    final AmpacityFactor factor(AmpacityFactor.Kind kind, int figure, int insulationCelsius) {
        return tables.factors().stream()
                .filter(one -> one.family() == family && one.kind() == kind && one.covers(figure, insulationCelsius))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        "laying",
                        kind == AmpacityFactor.Kind.AMBIENT ? "ambientCelsius" : "loadedConductors",
                        String.valueOf(figure),
                        "within the table for insulation of " + insulationCelsius + " °C"));
    }

    /** The ampacity of the table, with fewer amperes for neighbours and warmth. */
    final Answer<Current> corrected(ConductorSpec conductor, int insulationCelsius, Laying laying) {
        Current base = conductor.ampacity(insulationCelsius);
        Citation source = conductor
                .column(insulationCelsius)
                .map(column -> column.citation())
                .orElse(conductor.citation());
        Answer<Current> answer = Answer.of(
                base,
                Steps.read(
                        "ampacity of " + conductor.label() + ", insulation for " + insulationCelsius + " °C",
                        base,
                        source));
        answer = times(
                answer,
                "conductors that carry current: " + laying.loadedConductors(),
                factor(AmpacityFactor.Kind.LOADED_CONDUCTORS, laying.loadedConductors(), insulationCelsius));
        if (laying.ambientCelsius().isPresent()) {
            int ambient = laying.ambientCelsius().getAsInt();
            answer = times(
                    answer,
                    "around them " + ambient + " °C",
                    factor(AmpacityFactor.Kind.AMBIENT, ambient, insulationCelsius));
        }
        return answer;
    }

    private static Answer<Current> times(Answer<Current> before, String text, AmpacityFactor factor) {
        Current after = before.value().times(factor.factor().value());
        return before.then(
                after,
                step(
                        text,
                        "I = I₀ · f",
                        after,
                        factor.citation(),
                        input("I₀", before.value()),
                        input("f", factor.factor())));
    }

    public Answer<Ratio> fill(ConduitSpec conduit, List<ConduitContent> contents) {
        double filledM2 = 0;
        int count = 0;
        for (ConduitContent content : contents) {
            filledM2 += content.each().si() * content.count();
            count += content.count();
        }
        Ratio share = Ratio.of(filledM2 / conduit.area().si());
        return Answer.of(
                share,
                step(
                        "fill of " + conduit.size() + " " + conduit.series() + " with "
                                + String.join(
                                        ", ",
                                        contents.stream()
                                                .map(one -> one.count() + " × " + one.what())
                                                .toList()),
                        "share = Σ A / A₀",
                        share,
                        fillLimit(Math.max(1, count)).citation(),
                        input("Σ A", new Area(filledM2)),
                        input("A₀", conduit.area())));
    }

    public Optional<ConduitSpec> conduitFor(String series, List<ConduitContent> contents) {
        int count = contents.stream().mapToInt(ConduitContent::count).sum();
        Rule limit = fillLimit(Math.max(1, count));
        return tables.conduits(series).stream()
                .filter(conduit -> limit.isKeptBy(fill(conduit, contents).value()))
                .findFirst();
    }

    public Rule cover(SurfaceKind surface, Burial burial) {
        return switch (surface) {
            case LAWN, BED, WATER -> cover(BuriedUnder.OPEN_GROUND, burial);
            case STRUCTURE -> cover(BuriedUnder.BUILDING, burial);
            case PAVING ->
                PAVING.stream()
                        .map(under -> cover(under, burial))
                        .max(Comparator.comparing(one -> (Length) one.limit()))
                        .orElseThrow();
        };
    }

    public Rule cover(BuriedUnder under, Burial burial) {
        Rule rule = rule("cover");
        if (rule.citation().standing() == Standing.STATED) {
            return rule;
        }
        List<BuriedAs> columns = columns(burial);
        BurialCover least = tables.covers().stream()
                .filter(one -> one.family() == family && one.under() == under && columns.contains(one.as()))
                .min(Comparator.comparing(BurialCover::cover))
                .orElseThrow(() -> new IllegalStateException("no cover for " + columns + " under " + under));
        return new Rule(rule.id(), rule.title(), rule.side(), least.cover(), rule.severity(), least.citation());
    }

    public Answer<Voltage> controlDrop(
            Current valve, ConductorSpec valveWire, Current common, ConductorSpec commonWire, Length oneWay) {
        Resistance own = warmPerMetre(valveWire);
        Resistance shared = warmPerMetre(commonWire);
        Voltage drop = new Voltage(ValveWires.dropV(oneWay.si(), valve.si(), own.si(), common.si(), shared.si()));
        return Answer.of(
                drop,
                step(
                        "voltage drop of valve wires, " + valveWire.label() + " and common " + commonWire.label(),
                        "U = l · (Iv · rv + Ic · rc)",
                        drop,
                        Steps.OHM,
                        input("l", oneWay),
                        input("Iv", valve),
                        input("rv, of one metre", own),
                        input("Ic", common),
                        input("rc, of one metre", shared)));
    }

    public Answer<Length> longestControlRun(
            Current valve, ConductorSpec valveWire, Current common, ConductorSpec commonWire) {
        Rule limit = controlDropLimit();
        Resistance own = warmPerMetre(valveWire);
        Resistance shared = warmPerMetre(commonWire);
        Length longest =
                new Length(ValveWires.longestM(limit.limit().si(), valve.si(), own.si(), common.si(), shared.si()));
        return Answer.of(
                longest,
                step(
                        "longest way for valve wires, " + valveWire.label() + " and common " + commonWire.label(),
                        "l = U / (Iv · rv + Ic · rc)",
                        longest,
                        limit.citation(),
                        input("U", limit.limit()),
                        input("Iv", valve),
                        input("rv, of one metre", own),
                        input("Ic", common),
                        input("rc, of one metre", shared)));
    }
}
