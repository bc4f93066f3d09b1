package leat.model.power;

import java.util.List;
import java.util.Optional;
import leat.model.geometry.Polyline;
import leat.model.id.CableId;
import leat.model.id.ConduitId;
import leat.model.id.WireEndId;
import leat.model.site.Phase;

/** Conductors from one thing to the next, all along together. */
public sealed interface Cable permits PowerCable, ValveCable {

    CableId id();

    WireEndId from();

    WireEndId to();

    Polyline route();

    /** The conduits that it passes through, in its direction; where it is in none it lies in the ground or indoors. */
    List<ConduitId> conduits();

    /** Key of its conductors in the catalogue; empty while it is still to be chosen. */
    Optional<String> conductor();

    boolean existing();

    /** When it is pulled; what it feeds may come later. */
    Phase phase();

    Cable withConductor(Optional<String> newConductor);

    Cable withConduits(List<ConduitId> newConduits);
}
