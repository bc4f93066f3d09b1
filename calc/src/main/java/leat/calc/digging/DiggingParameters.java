package leat.calc.digging;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.Require;
import leat.model.id.LaidId;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.Volume;

/**
 * What the designer may choose about digging. Widths, room and separations are rules, so a yard states its own.
 *
 * @param sideSlope  how far each side of a trench leans out for each unit of depth; empty for upright sides, and for
 *     those of {@link DigLaw#SLOPE_TYPE_C} where a trench is so deep that its sides need support
 * @param swell      of all earth; empty to go by the soil of the surfaces that a trench passes, see {@link Earth}
 * @param tamped     volume that one of the bank fills when it is tamped; default 1: back to how it lay, common practice,
 *     no source
 * @param load       of left-over earth; default 0.06 m³, a wheelbarrow, common practice, no source
 * @param covers     least cover of conduits and cables as the electrical code asks, where it was looked up; the rules say
 *     it for all others
 */
public record DiggingParameters(
        Optional<Ratio> sideSlope, Optional<Ratio> swell, Ratio tamped, Volume load, SortedMap<LaidId, Length> covers) {

    public DiggingParameters {
        Require.present("digging", "sideSlope", sideSlope);
        sideSlope.ifPresent(one -> Require.atLeast("digging", "sideSlope", one, Ratio.ZERO));
        Require.present("digging", "swell", swell);
        swell.ifPresent(one -> Require.atLeast("digging", "swell", one, Ratio.ZERO));
        Require.moreThan("digging", "tamped", tamped, Ratio.ZERO);
        Require.moreThan("digging", "load", load, Volume.ZERO);
        Require.present("digging", "covers", covers);
        covers = Collections.unmodifiableSortedMap(new TreeMap<>(covers));
    }

    public static DiggingParameters defaults() {
        return new DiggingParameters(
                Optional.empty(),
                Optional.empty(),
                Ratio.of(1),
                Volume.cubicMetres(0.06),
                Collections.emptySortedMap());
    }

    public DiggingParameters withSideSlope(Ratio ratio) {
        return new DiggingParameters(Optional.of(ratio), swell, tamped, load, covers);
    }

    public DiggingParameters withSwell(Ratio ratio) {
        return new DiggingParameters(sideSlope, Optional.of(ratio), tamped, load, covers);
    }

    public DiggingParameters withTamped(Ratio ratio) {
        return new DiggingParameters(sideSlope, swell, ratio, load, covers);
    }

    public DiggingParameters withLoad(Volume volume) {
        return new DiggingParameters(sideSlope, swell, tamped, volume, covers);
    }

    public DiggingParameters withCovers(Map<LaidId, Length> some) {
        return new DiggingParameters(sideSlope, swell, tamped, load, new TreeMap<>(some));
    }
}
