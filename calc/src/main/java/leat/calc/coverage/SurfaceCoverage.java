package leat.calc.coverage;

import leat.model.id.SurfaceId;
import leat.model.quantity.Count;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Ratio;

/**
 * How one surface is watered. Where all is dry, the measures of evenness are 0.
 *
 * @param wanted       heads that are to reach each spot: two on a lawn, one on a bed
 * @param reachedByOne share of the surface within reach of at least one head
 * @param reachedByTwo of at least two
 * @param christiansen Christiansen's coefficient of uniformity, 1 − Σ|d − m| / (n m) over the n cells
 * @param lowQuarter   low-quarter distribution uniformity: mean of the lowest quarter of the cells over the mean of all
 * @param mean         depth of water in a time, while all heads run
 * @param cells        the same spot by spot
 */
public record SurfaceCoverage(
        SurfaceId surface,
        Count wanted,
        Ratio reachedByOne,
        Ratio reachedByTwo,
        Ratio christiansen,
        Ratio lowQuarter,
        PrecipitationRate mean,
        WetCells cells) {

    /** Share of the surface within reach of as many heads as are wanted. */
    public Ratio reachedAsWanted() {
        return wanted.value() >= 2 ? reachedByTwo : reachedByOne;
    }
}
