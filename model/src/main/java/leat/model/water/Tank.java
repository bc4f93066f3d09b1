package leat.model.water;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.SourceId;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;

/**
 * A raised tank that feeds by gravity.
 *
 * @param waterLevel least height of the water above the outlet while it feeds, more than 0
 */
public record Tank(SourceId id, Point at, Length waterLevel, Optional<String> meter) implements Source {

    /** Weight of a cubic metre of water at 15 °C: 999.1 kg/m³ times standard gravity. */
    static final double PASCALS_PER_METRE = 999.1 * 9.80665;

    public Tank {
        Require.present("tank", "id", id);
        Require.present("tank " + id, "at", at);
        Require.moreThan("tank " + id, "waterLevel", waterLevel, Length.ZERO);
        Require.present("tank " + id, "meter", meter);
        meter.ifPresent(key -> Require.name("tank " + id, "meter", key));
    }

    @Override
    public Pressure staticPressure() {
        return new Pressure(waterLevel.metres() * PASCALS_PER_METRE);
    }

    @Override
    public Pressure pressureAt(Flow drawn) {
        return staticPressure();
    }

    @Override
    public Water water() {
        return Water.NON_DRINKING;
    }
}
