package leat.calc.wiring;

import static leat.calc.wiring.Steps.input;
import static leat.calc.wiring.Steps.step;

import leat.calc.wiring.internal.CopperWire;
import leat.model.catalog.ConductorSpec;
import leat.model.catalog.InsulationColumn;
import leat.model.finding.Citation;
import leat.model.finding.Standing;
import leat.model.quantity.Current;
import leat.model.quantity.Length;
import leat.model.quantity.Resistance;

/** What cables of two conductors for lamps of low voltage carry and lose, alike in both families. */
final class LampCables {

    /** A cable that lies in garden soil and carries well below what it may; common practice, no source. */
    private static final int CELSIUS = 30;

    private static final Citation RESISTANCE = new Citation(
            "NEC ch. 9 table 8 or IEC 60228, at " + CELSIUS + " °C by IEC 60028: cable in garden soil stays cool",
            Standing.RECOMPUTED);

    private LampCables() {}

    /** The limit of small conductors, or the least ampacity of the tables where there is none. */
    static Answer<Current> ampacity(ConductorSpec conductor) {
        Current most = conductor
                .mostBreaker()
                .or(() -> conductor.columns().stream()
                        .flatMap(column -> column.ampacity().stream())
                        .min(Current::compareTo))
                .orElse(Current.ZERO);
        Citation source = conductor.mostBreaker().isPresent()
                ? conductor.citation()
                : conductor.columns().stream()
                        .filter(column -> column.ampacity().filter(most::equals).isPresent())
                        .map(InsulationColumn::citation)
                        .findFirst()
                        .orElse(conductor.citation());
        return Answer.of(most, Steps.read("most for two conductors of " + conductor.label(), most, source));
    }

    static Answer<Resistance> loopResistance(ConductorSpec conductor, Length oneWay) {
        Resistance perMetre = new Resistance(CopperWire.atCelsius(
                conductor.metal().perMetre().si(), conductor.metal().celsius(), CELSIUS));
        Resistance loop = perMetre.times(2 * oneWay.si());
        return Answer.of(
                loop,
                step(
                        "resistance out and back, " + conductor.label() + " at " + CELSIUS + " °C",
                        "R = 2 · l · r",
                        loop,
                        RESISTANCE,
                        input("l", oneWay),
                        input("r, of one metre", perMetre)));
    }
}
