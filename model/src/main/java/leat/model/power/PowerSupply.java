package leat.model.power;

import java.util.Optional;
import leat.model.geometry.Point;
import leat.model.id.SupplyId;
import leat.model.id.SurfaceId;
import leat.model.site.Phase;

/** What circuits start from. */
public sealed interface PowerSupply permits Panel, Transformer {

    SupplyId id();

    Point at();

    /** The structure in which it stands. */
    Optional<SurfaceId> inside();

    Phase phase();
}
