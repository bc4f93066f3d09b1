package leat.model.power;

import java.util.Optional;
import leat.model.geometry.Point;
import leat.model.id.CircuitId;
import leat.model.id.LoadId;
import leat.model.quantity.Power;
import leat.model.site.Phase;

/** What takes power from a circuit. */
public sealed interface Load permits Outlet, Luminaire, StructureFeed, Controller, Transformer {

    LoadId id();

    Point at();

    /** Empty while it is still to be chosen. */
    Optional<CircuitId> circuit();

    /** The power that the plan reckons with. */
    Power power();

    Phase phase();

    /** What is laid now if the load itself comes later. */
    Ahead ahead();

    /** Whether conductors of a circuit lead to it; what has a plug takes its power from an outlet. */
    default boolean isWired() {
        return true;
    }

    Load withCircuit(Optional<CircuitId> newCircuit);
}
