package leat.calc.wiring;

import java.util.Optional;
import leat.model.id.CircuitId;
import leat.model.id.LoadId;
import leat.model.quantity.Current;
import leat.model.quantity.Ratio;
import leat.model.quantity.Voltage;

/**
 * What a load gets.
 *
 * @param current  that it draws
 * @param lost     voltage on the way from the panel of its circuit; empty if no way of known conductors leads there
 * @param drop     the same as a share of the circuit's voltage
 * @param voltage  that it gets while all is on; empty as {@code lost} is
 * @param guarded  whether circuit or outlet protect it against current that leaks to ground
 */
public record LoadFigures(
        LoadId id,
        CircuitId circuit,
        Current current,
        Optional<Voltage> lost,
        Optional<Ratio> drop,
        Optional<Voltage> voltage,
        boolean guarded) {}
