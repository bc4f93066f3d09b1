package leat.calc.wiring;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import leat.model.finding.Finding;
import leat.model.finding.Status;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.LaidId;
import leat.model.id.LoadId;
import leat.model.id.TransformerId;
import leat.model.quantity.Length;

/**
 * Figures of all circuits, cables, loads, conduits and transformers, and what is wrong with them. Lists are sorted by id.
 *
 * @param covers least cover of all conduits and bare cables that lie in trenches, the most that any of their trenches asks
 */
public record WiringResult(
        Status status,
        List<CircuitFigures> circuits,
        List<CableFigures> cables,
        List<LoadFigures> loads,
        List<ConduitFigures> conduits,
        List<TransformerFigures> transformers,
        SortedMap<LaidId, Length> covers,
        List<Finding> findings) {

    public WiringResult {
        circuits = List.copyOf(circuits);
        cables = List.copyOf(cables);
        loads = List.copyOf(loads);
        conduits = List.copyOf(conduits);
        transformers = List.copyOf(transformers);
        covers = java.util.Collections.unmodifiableSortedMap(new java.util.TreeMap<>(covers));
        findings = List.copyOf(findings);
    }

    public Optional<CircuitFigures> circuit(CircuitId id) {
        return circuits.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    public Optional<CableFigures> cable(CableId id) {
        return cables.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    public Optional<LoadFigures> load(LoadId id) {
        return loads.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    public Optional<TransformerFigures> transformer(TransformerId id) {
        return transformers.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    public Optional<ConduitFigures> conduit(ConduitId id) {
        return conduits.stream().filter(one -> one.id().equals(id)).findFirst();
    }
}
