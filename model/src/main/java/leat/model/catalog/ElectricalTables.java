package leat.model.catalog;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.fault.Require;
import leat.model.power.CodeFamily;

/**
 * Conductors, cables, conduits, breakers and boxes, and what the codes of both families tabulate about them. What they
 * demand beyond that stands in {@link Rules}. Copper only.
 *
 * @param conductors of both families, finest first
 * @param conduits   by series, smallest first
 * @param grounding  smallest breaker first
 * @param breakers   smallest first
 */
public record ElectricalTables(
        List<ConductorSpec> conductors,
        List<CableSpec> cables,
        SortedMap<String, List<ConduitSpec>> conduits,
        List<AmpacityFactor> factors,
        List<GroundingStep> grounding,
        List<BreakerRating> breakers,
        List<BurialCover> covers,
        SortedMap<String, BoxSpec> boxes,
        ValveSupply valveSupply) {

    /** Without a row; the coil of a valve is a common one. */
    public static final ElectricalTables EMPTY = new ElectricalTables(
            List.of(),
            List.of(),
            Collections.emptySortedMap(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Collections.emptySortedMap(),
            ValveSupply.COMMON);

    public ElectricalTables {
        conductors = sorted("conductors", conductors, ConductorSpec.byArea());
        cables = Require.unique("cable", cables, CableSpec::key);
        SortedMap<String, List<ConduitSpec>> kept = new TreeMap<>();
        conduits.forEach((series, sizes) ->
                kept.put(series, sorted("conduits " + series, sizes, Comparator.comparing(ConduitSpec::area))));
        conduits = Collections.unmodifiableSortedMap(kept);
        factors = Require.entries("electrical tables", "factors", factors);
        grounding = sorted("grounding", grounding, Comparator.comparing(GroundingStep::upTo));
        breakers = sorted("breakers", breakers, Comparator.comparing(BreakerRating::rating));
        covers = Require.entries("electrical tables", "covers", covers);
        boxes = Collections.unmodifiableSortedMap(new TreeMap<>(boxes));
        Require.present("electrical tables", "valveSupply", valveSupply);
    }

    private static <T> List<T> sorted(String field, List<T> rows, Comparator<T> order) {
        List<T> all = new ArrayList<>(Require.entries("electrical tables", field, rows));
        all.sort(order);
        return List.copyOf(all);
    }

    /** Finest first. */
    public List<ConductorSpec> conductors(CodeFamily family) {
        return conductors.stream().filter(one -> one.family() == family).toList();
    }

    /**
     * @param size such as {@code 12} or {@code 2.5}
     * @throws InvalidValueException if the family has no such size
     */
    public ConductorSpec conductor(CodeFamily family, String size) {
        List<ConductorSpec> sizes = conductors(family);
        return sizes.stream()
                .filter(one -> one.size().equals(size))
                .findFirst()
                .orElseThrow(() -> unknown(
                        "conductor",
                        "size",
                        size,
                        "a size of conductor",
                        sizes.stream().map(ConductorSpec::size).toList()));
    }

    /** All sizes of a series, smallest first. */
    public List<ConduitSpec> conduits(String series) {
        List<ConduitSpec> sizes = conduits.get(series);
        if (sizes == null) {
            throw unknown("conduit", "series", series, "a series of conduit", List.copyOf(conduits.keySet()));
        }
        return sizes;
    }

    public ConduitSpec conduit(String series, String size) {
        List<ConduitSpec> sizes = conduits(series);
        return sizes.stream()
                .filter(one -> one.size().equals(size))
                .findFirst()
                .orElseThrow(() -> unknown(
                        "conduit " + series,
                        "size",
                        size,
                        "a trade size",
                        sizes.stream().map(ConduitSpec::size).toList()));
    }

    /** The cable for power with those live conductors, or empty: not every combination is made. */
    public Optional<CableSpec> powerCable(CodeFamily family, String conductor, int liveWires) {
        return cables.stream()
                .filter(one -> one.use() == CableUse.POWER
                        && one.family() == family
                        && one.conductor().equals(conductor)
                        && one.strands() == liveWires)
                .findFirst();
    }

    /** The cable for control with the fewest strands that are enough, or empty. */
    public Optional<CableSpec> controlCable(CodeFamily family, String conductor, int strands) {
        return cables.stream()
                .filter(one -> one.use() == CableUse.CONTROL
                        && one.family() == family
                        && one.conductor().equals(conductor)
                        && one.strands() >= strands)
                .min(Comparator.comparingInt(CableSpec::strands));
    }

    /** The cable for lamps of low voltage with two strands of that size, or empty. */
    public Optional<CableSpec> lampCable(CodeFamily family, String conductor) {
        return cables.stream()
                .filter(one -> one.use() == CableUse.LAMPS
                        && one.family() == family
                        && one.conductor().equals(conductor))
                .findFirst();
    }

    public BoxSpec box(String key) {
        BoxSpec box = boxes.get(key);
        if (box == null) {
            throw unknown("box", "key", key, "a key of the catalogue", List.copyOf(boxes.keySet()));
        }
        return box;
    }

    private static InvalidValueException unknown(
            String thing, String field, String key, String allowed, List<String> known) {
        String near = known.size() <= 20 ? ": " + String.join(", ", known) : Nearest.hint(key, known);
        return new InvalidValueException(thing, field, "'" + key + "'", allowed + near);
    }
}
