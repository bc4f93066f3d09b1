package leat.model.water;

import java.util.Optional;
import leat.model.geometry.Point;
import leat.model.id.SourceId;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;

/** Where the water comes from. The set is closed. Its outlet lies at the height of the ground there. */
public sealed interface Source permits Mains, Pump, Tank {

    SourceId id();

    Point at();

    /** Pressure at the outlet while nothing flows. */
    Pressure staticPressure();

    /** Pressure at the outlet while that much is drawn; never rises when more is drawn, and may fall below zero. */
    Pressure pressureAt(Flow drawn);

    /** What a pipe straight from this source carries. */
    Water water();

    /** Catalogue key of the meter behind the outlet; empty where there is none. */
    Optional<String> meter();
}
