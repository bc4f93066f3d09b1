package leat.model.catalog;

import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Ratio;

/**
 * A soil by its texture.
 *
 * @param key            the texture's name, such as {@code silt loam}
 * @param availableWater depth of water that plants can draw from a depth of soil, such as 16 %
 * @param intake         depth of water that a bare level soil takes in an hour, in the long run
 */
public record SoilTexture(String key, Ratio availableWater, PrecipitationRate intake, Citation citation) {

    public SoilTexture {
        Require.name("soil", "key", key);
        Require.moreThan("soil " + key, "availableWater", availableWater, Ratio.ZERO);
        Require.moreThan("soil " + key, "intake", intake, PrecipitationRate.ZERO);
        Require.present("soil " + key, "citation", citation);
    }
}
