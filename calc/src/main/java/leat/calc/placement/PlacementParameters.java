package leat.calc.placement;

import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;

/**
 * What may be placed, and how hard to look for the best place.
 *
 * @param families    keys of the head families that may be placed, rotors or sprays, at least one. Each surface gets the one
 *                    family that does best; of equal ones the earlier. Others fill in only where that one cannot reach. A head
 *                    may be turned down to the least radius of its family
 * @param cell        side of the cells on which reach is judged, more than 0; default 0.25 m, as for coverage
 * @param strip       along its edge, paving, a structure or the ground outside the lot may be thrown on; default 0.3 m, common
 *                    practice, no source; as for coverage
 * @param reserve     share by which radii may later fall short, 0 or more and less than 100 %: heads are set that much closer;
 *                    default 0 %, which is right where heads get the reference pressure of their family
 * @param throwOnBeds whether heads may throw on beds beside the lawn; default true
 * @param effort      most changes of a surface's heads that are tried; the same count gives the same heads. Default 3,000
 * @param drip        the drip lines of beds that are watered by drip
 */
public record PlacementParameters(
        List<String> families,
        Length cell,
        Length strip,
        Ratio reserve,
        boolean throwOnBeds,
        Count effort,
        DripParameters drip) {

    public PlacementParameters {
        families = List.copyOf(families);
        if (families.isEmpty()) {
            throw new InvalidValueException("placement", "families", "none", "at least one key of a head family");
        }
        Require.moreThan("placement", "cell", cell, Length.ZERO);
        Require.atLeast("placement", "strip", strip, Length.ZERO);
        Require.atLeast("placement", "reserve", reserve, Ratio.ZERO);
        if (reserve.value() >= 1) {
            throw new InvalidValueException("placement", "reserve", reserve.toString(), "less than 100 %");
        }
        Require.atLeast("placement", "effort", effort, Count.ZERO);
        Require.present("placement", "drip", drip);
    }

    /** Sprays for small surfaces, turning streams for large ones: families whose flow goes with the arc. */
    public static PlacementParameters defaults() {
        return new PlacementParameters(
                List.of(
                        "spray-2_4",
                        "spray-3_0",
                        "spray-3_7",
                        "spray-4_6",
                        "multi-4_9",
                        "multi-6_1",
                        "multi-7_6",
                        "multi-9_1"),
                Length.metres(0.25),
                Length.metres(0.3),
                Ratio.ZERO,
                true,
                Count.of(3000),
                DripParameters.defaults());
    }

    public PlacementParameters withFamilies(List<String> newFamilies) {
        return new PlacementParameters(newFamilies, cell, strip, reserve, throwOnBeds, effort, drip);
    }

    public PlacementParameters withCell(Length newCell) {
        return new PlacementParameters(families, newCell, strip, reserve, throwOnBeds, effort, drip);
    }

    public PlacementParameters withStrip(Length newStrip) {
        return new PlacementParameters(families, cell, newStrip, reserve, throwOnBeds, effort, drip);
    }

    public PlacementParameters withReserve(Ratio newReserve) {
        return new PlacementParameters(families, cell, strip, newReserve, throwOnBeds, effort, drip);
    }

    public PlacementParameters withThrowOnBeds(boolean may) {
        return new PlacementParameters(families, cell, strip, reserve, may, effort, drip);
    }

    public PlacementParameters withEffort(Count newEffort) {
        return new PlacementParameters(families, cell, strip, reserve, throwOnBeds, newEffort, drip);
    }

    public PlacementParameters withDrip(DripParameters newDrip) {
        return new PlacementParameters(families, cell, strip, reserve, throwOnBeds, effort, newDrip);
    }
}
