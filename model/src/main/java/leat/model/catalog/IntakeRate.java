package leat.model.catalog;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Ratio;

/**
 * How fast sprinklers may throw on a soil for hours before water runs off.
 *
 * @param soil    key of the texture
 * @param from    least slope, 0.05 for 5 %
 * @param below   slope from which another row holds; empty for all steeper ground
 * @param covered with grass or other plants; else bare
 */
public record IntakeRate(
        String soil, Ratio from, Optional<Ratio> below, boolean covered, PrecipitationRate most, Citation citation) {

    public IntakeRate {
        Require.name("intake rate", "soil", soil);
        String thing = "intake rate of " + soil;
        Require.atLeast(thing, "from", from, Ratio.ZERO);
        Require.present(thing, "below", below);
        below.ifPresent(steep -> Require.moreThan(thing, "below", steep, from));
        Require.moreThan(thing, "most", most, PrecipitationRate.ZERO);
        Require.present(thing, "citation", citation);
    }

    boolean holds(String texture, Ratio slope, boolean isCovered) {
        return soil.equals(texture)
                && covered == isCovered
                && slope.compareTo(from) >= 0
                && below.map(steep -> slope.compareTo(steep) < 0).orElse(true);
    }
}
