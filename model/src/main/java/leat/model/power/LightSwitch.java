package leat.model.power;

import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.SwitchId;
import leat.model.site.Phase;

/** A switch for luminaires. Their conductors pass through it. */
public record LightSwitch(SwitchId id, Point at, Phase phase) {

    public LightSwitch {
        Require.present("switch", "id", id);
        Require.present("switch " + id, "at", at);
        Require.present("switch " + id, "phase", phase);
    }
}
