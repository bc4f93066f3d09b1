package leat.calc.assess;

import java.util.Set;
import java.util.stream.Stream;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.Id;
import leat.model.id.LoadId;
import leat.model.power.Cable;
import leat.model.power.Circuit;
import leat.model.power.Conduit;
import leat.model.power.Load;
import leat.model.power.PowerSystem;
import leat.model.power.Transformer;

/** What of power and control has figures that can be asked for. */
final class WiredThings {

    private static final Set<String> OF_LOADS = Set.of("current", "drop", "voltage");
    private static final Set<String> OF_TRANSFORMERS = Set.of("load");
    private static final Set<String> OF_CIRCUITS = Set.of("current", "ampacity");
    private static final Set<String> OF_CABLES = Set.of("current", "drop", "ampacity");
    private static final Set<String> OF_CONDUITS = Set.of("fill");

    private WiredThings() {}

    static boolean has(Id id) {
        return id instanceof LoadId || id instanceof CircuitId || id instanceof CableId || id instanceof ConduitId;
    }

    /** All of them that have that figure: loads, transformers, circuits, cables, conduits, for one name may stand for several. */
    static Stream<Id> with(PowerSystem power, String figure) {
        Stream<Id> loads = power.loads().map(Load::id);
        Stream<Id> transformers = power.transformers().stream().map(Transformer::id);
        Stream<Id> circuits = power.circuits().stream().map(Circuit::id);
        Stream<Id> cables = power.cables().map(Cable::id);
        Stream<Id> conduits = power.conduits().stream().map(Conduit::id);
        return Stream.of(
                        loads.filter(id -> OF_LOADS.contains(figure)),
                        transformers.filter(id -> OF_TRANSFORMERS.contains(figure)),
                        circuits.filter(id -> OF_CIRCUITS.contains(figure)),
                        cables.filter(id -> OF_CABLES.contains(figure)),
                        conduits.filter(id -> OF_CONDUITS.contains(figure)))
                .flatMap(ids -> ids);
    }
}
