package leat.calc.zoning;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.Require;
import leat.model.id.ManifoldId;
import leat.model.id.UpstreamId;
import leat.model.quantity.Count;
import leat.model.quantity.Flow;
import leat.model.quantity.Ratio;

/**
 * What the designer may choose about zones.
 *
 * @param mostFlow     most flow of a zone; empty to find it from source, meter, backflow preventer, valves and main
 * @param safety       share of what the source gives and the devices bear that a zone may take, more than 0, at most 1;
 *     default 90 %, common practice, no source
 * @param lossReserve  pressure set aside for losses on the way, as a share of what the heads want; default 25 %, common
 *     practice, no source
 * @param mostHeads    heads of a zone, at least 1; default 15, common practice, no source
 * @param mayAddValves whether zones beyond the given valves get planned valves; else their heads stay without a zone
 * @param spareValves  wanted at each manifold for zones to come, given ones included
 * @param seed         of the search; the same seed and effort give the same zones
 * @param effort       moves tried in the search; the default takes about half a second for 40 heads
 */
public record ZoningParameters(
        Optional<Flow> mostFlow,
        Ratio safety,
        Ratio lossReserve,
        Count mostHeads,
        boolean mayAddValves,
        Count spareValves,
        SortedMap<ManifoldId, UpstreamId> mains,
        long seed,
        long effort) {

    private static final long USUAL_EFFORT = 1_000_000;

    public ZoningParameters {
        Require.present("zoning", "mostFlow", mostFlow);
        mostFlow.ifPresent(flow -> Require.moreThan("zoning", "mostFlow", flow, Flow.ZERO));
        Require.moreThan("zoning", "safety", safety, Ratio.ZERO);
        Require.atLeast("zoning", "lossReserve", lossReserve, Ratio.ZERO);
        Require.atLeast("zoning", "mostHeads", mostHeads, Count.of(1));
        Require.atLeast("zoning", "spareValves", spareValves, Count.ZERO);
        mains = Collections.unmodifiableSortedMap(new TreeMap<>(mains));
        Require.atLeast("zoning", "effort", effort, 0L);
    }

    public static ZoningParameters defaults() {
        return new ZoningParameters(
                Optional.empty(),
                Ratio.percent(90),
                Ratio.percent(25),
                Count.of(15),
                true,
                Count.ZERO,
                Collections.emptySortedMap(),
                1,
                USUAL_EFFORT);
    }

    public ZoningParameters withMostFlow(Flow flow) {
        return new ZoningParameters(
                Optional.of(flow), safety, lossReserve, mostHeads, mayAddValves, spareValves, mains, seed, effort);
    }

    public ZoningParameters withSafety(Ratio share) {
        return new ZoningParameters(
                mostFlow, share, lossReserve, mostHeads, mayAddValves, spareValves, mains, seed, effort);
    }

    public ZoningParameters withLossReserve(Ratio share) {
        return new ZoningParameters(mostFlow, safety, share, mostHeads, mayAddValves, spareValves, mains, seed, effort);
    }

    public ZoningParameters withMostHeads(Count heads) {
        return new ZoningParameters(
                mostFlow, safety, lossReserve, heads, mayAddValves, spareValves, mains, seed, effort);
    }

    public ZoningParameters withMayAddValves(boolean may) {
        return new ZoningParameters(mostFlow, safety, lossReserve, mostHeads, may, spareValves, mains, seed, effort);
    }

    public ZoningParameters withSpareValves(Count spares) {
        return new ZoningParameters(
                mostFlow, safety, lossReserve, mostHeads, mayAddValves, spares, mains, seed, effort);
    }

    public ZoningParameters withSeed(long newSeed) {
        return new ZoningParameters(
                mostFlow, safety, lossReserve, mostHeads, mayAddValves, spareValves, mains, newSeed, effort);
    }

    public ZoningParameters withEffort(long moves) {
        return new ZoningParameters(
                mostFlow, safety, lossReserve, mostHeads, mayAddValves, spareValves, mains, seed, moves);
    }

    public ZoningParameters withMains(SortedMap<ManifoldId, UpstreamId> beginnings) {
        return new ZoningParameters(
                mostFlow, safety, lossReserve, mostHeads, mayAddValves, spareValves, beginnings, seed, effort);
    }
}
