package leat.calc.coverage;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.Require;
import leat.model.id.HeadId;
import leat.model.quantity.Length;

/**
 * How closely coverage is measured.
 *
 * @param cell    side of the cells, more than 0; default 0.25 m, at which shares of 2,000 m² come within 0.03 % of the exact
 *                areas. Doubled where a surface would have more than four million cells
 * @param strip   along its edge, paving, a structure or the ground outside the lot may be thrown on: wind and a head a hand's
 *                breadth off do as much. Default 0.3 m, common practice, no source
 * @param working what heads do at the pressure that they have; those not named here are taken as set, at the reference pressure
 *                of their family
 */
public record CoverageParameters(Length cell, Length strip, SortedMap<HeadId, WorkingHead> working) {

    public CoverageParameters {
        Require.moreThan("coverage", "cell", cell, Length.ZERO);
        Require.atLeast("coverage", "strip", strip, Length.ZERO);
        Require.present("coverage", "working", working);
        working = Collections.unmodifiableSortedMap(new TreeMap<>(working));
    }

    public static CoverageParameters defaults() {
        return new CoverageParameters(Length.metres(0.25), Length.metres(0.3), Collections.emptySortedMap());
    }

    public CoverageParameters withCell(Length newCell) {
        return new CoverageParameters(newCell, strip, working);
    }

    public CoverageParameters withStrip(Length newStrip) {
        return new CoverageParameters(cell, newStrip, working);
    }

    public CoverageParameters withWorking(Map<HeadId, WorkingHead> newWorking) {
        return new CoverageParameters(cell, strip, new TreeMap<>(newWorking));
    }
}
