package leat.calc;

import leat.model.plan.Site;
import leat.model.quantity.Length;
import leat.model.quantity.PrecipitationRate;
import leat.model.site.Surface;

/**
 * How far apart rows of drip line lie. Water from an emitter spreads less to the side the faster the soil takes it in. The figures
 * are those of a book for gardeners [Kourik], read on its author's page: 12 inches on sandy soil, 18 on loam, 18 to 24 on clay,
 * of which the lower end counts.
 */
public final class DripSpacing {

    private static final Length COARSE = Length.metres(0.30);
    private static final Length MEDIUM = Length.metres(0.45);
    private static final Length FINE = Length.metres(0.50);

    /** Sand and loamy sand take in as much. */
    private static final PrecipitationRate COARSE_FROM = PrecipitationRate.millimetresPerHour(40);

    /** Silty clay and clay take in less. */
    private static final PrecipitationRate FINE_BELOW = PrecipitationRate.millimetresPerHour(5);

    private DripSpacing() {}

    /** The most for the soil of the surface; as for loam where no soil is named. */
    public static Length of(Surface surface, Site site) {
        return surface.soil()
                .map(soil -> of(site.catalog().soil(soil).intake()))
                .orElse(MEDIUM);
    }

    private static Length of(PrecipitationRate intake) {
        if (intake.compareTo(COARSE_FROM) >= 0) {
            return COARSE;
        }
        return intake.compareTo(FINE_BELOW) < 0 ? FINE : MEDIUM;
    }
}
