package leat.calc.schedule;

import java.util.Optional;
import leat.model.catalog.IntakeRate;
import leat.model.catalog.SoilTexture;
import leat.model.fault.Require;
import leat.model.id.Id;
import leat.model.id.ZoneId;
import leat.model.quantity.Area;
import leat.model.quantity.Flow;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Ratio;
import leat.model.water.GrowingPlace;

/**
 * What a zone waters, and how.
 *
 * @param ground   the surface or the tree that gets most of its water; the zone is run for that
 * @param planting key of the kind of planting
 * @param growing  what makes it use more or less there
 * @param slope    of the ground, rise over run
 * @param area     that the zone waters: its part of the ground
 * @param flow     of the whole zone
 * @param rate     at which water falls on the area
 * @param evenness low-quarter distribution uniformity, 0 to 1
 * @param measured whether the evenness is the plan's own; else the usual one of such heads
 * @param intake   rate that the soil bears for hours; empty where water is let out at the ground and does not run off
 */
public record ZoneGround(
        ZoneId zone,
        Id ground,
        String planting,
        GrowingPlace growing,
        SoilTexture soil,
        Ratio slope,
        Area area,
        Flow flow,
        PrecipitationRate rate,
        Ratio evenness,
        boolean measured,
        Optional<IntakeRate> intake) {

    public ZoneGround {
        Require.present("zone ground", "zone", zone);
        String thing = "ground of zone " + zone;
        Require.present(thing, "ground", ground);
        Require.name(thing, "planting", planting);
        Require.present(thing, "growing", growing);
        Require.present(thing, "soil", soil);
        Require.atLeast(thing, "slope", slope, Ratio.ZERO);
        Require.present(thing, "area", area);
        Require.atLeast(thing, "flow", flow, Flow.ZERO);
        Require.moreThan(thing, "rate", rate, PrecipitationRate.ZERO);
        Require.atLeast(thing, "evenness", evenness, Ratio.ZERO);
        Require.present(thing, "intake", intake);
    }
}
