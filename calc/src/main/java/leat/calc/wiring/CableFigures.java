package leat.calc.wiring;

import java.util.Optional;
import leat.model.id.CableId;
import leat.model.quantity.Current;
import leat.model.quantity.Length;
import leat.model.quantity.Voltage;

/**
 * What a cable carries.
 *
 * @param length    on the plan
 * @param current   when all behind it is on; for valve wires, while a valve opens; empty if it leads nowhere
 * @param conductor with its unit, such as {@code 12 AWG}; empty while it has none
 * @param ampacity  as it lies; empty for valve wires, and while it has no conductor
 * @param grounding size of the grounding conductor beside it; empty for valve wires, and while it has no conductor
 * @param lost      voltage along it; empty while it has no conductor
 */
public record CableFigures(
        CableId id,
        Length length,
        Optional<Current> current,
        Optional<String> conductor,
        Optional<Current> ampacity,
        Optional<String> grounding,
        Optional<Voltage> lost) {}
