package leat.model.water;

import java.util.Optional;
import leat.model.geometry.Point;
import leat.model.geometry.Sector;
import leat.model.id.HeadId;

/**
 * Where water leaves the pipe onto the planting. Sealed by the shape of the wetting; what differs within a shape is a
 * family of the catalogue.
 */
public sealed interface Head permits Rotor, Spray, Bubbler, DripLine {

    HeadId id();

    /** Key of its family in the catalogue of heads. */
    String family();

    /** Where the pipe reaches it. */
    Point at();

    /** What it throws water over as set by the builder; empty for heads that do not throw. */
    Optional<Sector> sector();
}
