package leat.calc.wiring;

import java.util.Optional;
import leat.model.id.CircuitId;
import leat.model.quantity.Count;
import leat.model.quantity.Current;
import leat.model.quantity.Power;
import leat.model.quantity.Ratio;

/**
 * What a circuit carries.
 *
 * @param load     of all that it feeds
 * @param current  when all of it is on
 * @param reckoned current that the breaker is held for: what lasts for hours counts by more
 * @param breaker  its rating
 * @param loaded   reckoned over breaker
 * @param ampacity least of its conductors as they lie; empty while none has a size
 * @param loads    on it
 */
public record CircuitFigures(
        CircuitId id,
        Power load,
        Current current,
        Current reckoned,
        Current breaker,
        Ratio loaded,
        Optional<Current> ampacity,
        Count loads) {}
