package leat.calc.wiring;

import java.util.List;
import java.util.Optional;
import leat.model.catalog.BuriedUnder;
import leat.model.catalog.CableSpec;
import leat.model.catalog.ConductorSpec;
import leat.model.catalog.ConduitSpec;
import leat.model.finding.Rule;
import leat.model.plan.Site;
import leat.model.power.Load;
import leat.model.quantity.Count;
import leat.model.quantity.Current;
import leat.model.quantity.Length;
import leat.model.quantity.Power;
import leat.model.quantity.Ratio;
import leat.model.quantity.Resistance;
import leat.model.quantity.Voltage;
import leat.model.quantity.Volume;
import leat.model.site.SurfaceKind;

/**
 * What a family of electrical codes demands and allows, asked in the same words for both. Limits come as rules, which a
 * yard may state otherwise; figures come as answers with their steps and sources.
 * <p>
 * A {@code liveWires} of 2 is a circuit of two conductors that carry current; of 3, two poles with a neutral (NFPA 70) or
 * three phases (IEC 60364). Conductors given to it must be of its own tables, such as {@link #conductor} returns.
 */
public sealed interface ElectricalCode permits Nfpa70, Iec60364 {

    /** That of the site's yard, with the catalogue and the rules of the site. */
    static ElectricalCode of(Site site) {
        return switch (site.yard().codeFamily()) {
            case NFPA_70 -> new Nfpa70(site.catalog().electrical(), site.rules());
            case IEC_60364 -> new Iec60364(site.catalog().electrical(), site.rules());
        };
    }

    /** Its name, for people. */
    String title();

    /** All sizes of its tables, finest first. */
    List<ConductorSpec> conductors();

    /** Those that a circuit for power may have, finest first. */
    List<ConductorSpec> powerConductors();

    /**
     * @throws leat.model.fault.InvalidValueException if its tables have no such size
     */
    ConductorSpec conductor(String size);

    /** The sheathed cable with so many live conductors of that size, or empty: not every combination is made. */
    Optional<CableSpec> powerCable(ConductorSpec conductor, int liveWires);

    /** The cable for valve wires with the fewest strands that are enough, or empty. */
    Optional<CableSpec> controlCable(ConductorSpec conductor, int strands);

    /** Ratings that breakers are made with, smallest first. */
    List<Current> breakers();

    /** The current that a load draws, at unity power factor. */
    Answer<Current> loadCurrent(Power power, Voltage voltage, int liveWires);

    /** By how much a load counts that lasts for hours. */
    Rule continuousFactor();

    /** The load of a circuit over what its breaker bears, at most. */
    Rule loadLimit();

    /** What a conductor may carry. Never more with more neighbours, nor where it is warmer. */
    Answer<Current> ampacity(ConductorSpec conductor, Laying laying);

    /** The breaker over the greatest one that its conductors may have, at most. */
    Rule breakerLimit();

    /** The greatest breaker that protects a conductor; zero if none is small enough. */
    Answer<Current> mostBreaker(ConductorSpec conductor, Laying laying);

    /** The finest conductor that may have such a breaker; empty if none in the tables is thick enough. */
    Optional<Answer<ConductorSpec>> conductorFor(Current breaker, Laying laying);

    /** Voltage lost for each ampere on that way, measured as the voltage of the circuit is. */
    Answer<Resistance> loopResistance(ConductorSpec conductor, Length oneWay, int liveWires);

    /** Voltage lost on that way: current times {@link #loopResistance}. */
    Answer<Voltage> drop(Current current, Length oneWay, int liveWires, ConductorSpec conductor);

    /** The greatest voltage drop as a share of the voltage. */
    Rule dropLimit(DropSpan span, boolean lighting);

    /** The grounding conductor over the least one, at least; of areas. */
    Rule groundingLimit();

    /**
     * The least grounding (protective) conductor, in copper.
     *
     * @param least  the conductor that would have been enough without regard to voltage drop
     * @param chosen the conductor that the circuit has
     * @throws leat.model.fault.InvalidValueException if the breaker is beyond the tables
     */
    Answer<ConductorSpec> groundingConductor(Current breaker, ConductorSpec least, ConductorSpec chosen);

    /**
     * The greatest share of a conduit that so many wires and cables may fill together.
     *
     * @param count at least 1
     */
    Rule fillLimit(int count);

    /** The share of a conduit that its contents fill; 0 when it is empty. */
    Answer<Ratio> fill(ConduitSpec conduit, List<ConduitContent> contents);

    /** The greatest number of equal wires in a conduit. */
    Answer<Count> mostEqual(ConduitSpec conduit, ConductorSpec conductor);

    /** The smallest conduit of a series that the contents do not overfill; empty if none is large enough. */
    Optional<ConduitSpec> conduitFor(String series, List<ConduitContent> contents);

    /** The sum of bends between two places where conductors can be pulled, at most. */
    Rule bendLimit();

    /** How deep something lies at least, from the finished surface to its top. */
    Rule cover(BuriedUnder under, Burial burial);

    /** The same by what the yard knows of its surface: paving may be a drive, so the greater cover counts. */
    Rule cover(SurfaceKind surface, Burial burial);

    /** Cables under a building that are in no conduit, at most. */
    Rule underBuilding();

    /** Whether a load on such a circuit must be protected against current that leaks to ground: the rule, or empty. */
    Optional<Rule> groundFault(Load load, Voltage voltage, Current breaker);

    /** At how much leaking current that protection trips, at most. */
    Rule groundFaultRating();

    /** Conduits that hold both power and control, at most. */
    Rule mixing();

    /** Sizes that cables for lamps of low voltage are made with, finest first. */
    List<ConductorSpec> lampConductors();

    /** The cable of two conductors for lamps of low voltage, or empty. */
    Optional<CableSpec> lampCable(ConductorSpec conductor);

    /** What such a cable may carry, and so the current at which its circuit is cut off at the latest. */
    Answer<Current> lampAmpacity(ConductorSpec conductor);

    /** Voltage lost for each ampere on that way in such a cable, out and back. */
    Answer<Resistance> lampLoopResistance(ConductorSpec conductor, Length oneWay);

    /** The voltage of a circuit behind a transformer, at most. */
    Rule lampVoltageLimit();

    /** The current at which such a circuit is cut off, at most. */
    Rule lampCurrentLimit();

    /** How far lamps of low voltage stand from water, at least. */
    Rule lampWaterDistance();

    /** What is to be asked of whoever sells transformer, cable and lamps. */
    Rule lampListing();

    /** What is to be asked of a licensed electrician at each structure that is fed: disconnect and electrode. */
    List<Rule> atStructure();

    /** The volume that the contents of a box need; empty where the code does not count it. */
    Optional<Answer<Volume>> boxVolume(BoxContents contents);

    /** What the contents need over the volume of the box, at most. */
    Rule boxLimit();

    /** The voltage that valve wires may lose, at most. */
    Rule controlDropLimit();

    /**
     * Voltage lost on the way to a valve and back.
     *
     * @param valve         current of the valve, in its own wire
     * @param common        current of all valves that are open, in the common wire
     * @param valveWire     conductor of the valve's own wire
     * @param commonWire    conductor of the common wire
     */
    Answer<Voltage> controlDrop(
            Current valve, ConductorSpec valveWire, Current common, ConductorSpec commonWire, Length oneWay);

    /** The longest way on which valve wires lose no more than {@link #controlDropLimit}. */
    Answer<Length> longestControlRun(Current valve, ConductorSpec valveWire, Current common, ConductorSpec commonWire);
}
