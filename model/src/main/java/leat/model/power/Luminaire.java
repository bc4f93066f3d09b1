package leat.model.power;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.CircuitId;
import leat.model.id.LuminaireId;
import leat.model.id.SwitchId;
import leat.model.quantity.Power;
import leat.model.site.Phase;

/**
 * A light.
 *
 * @param lightSwitch what turns it on; empty when something else does
 * @param lamp        what it asks of a transformer; empty for one of the voltage of the panel
 */
public record Luminaire(
        LuminaireId id,
        Point at,
        Optional<SwitchId> lightSwitch,
        Power power,
        Optional<LampSupply> lamp,
        Optional<CircuitId> circuit,
        Phase phase,
        Ahead ahead)
        implements Load {

    public Luminaire {
        Require.present("luminaire", "id", id);
        String thing = "luminaire " + id;
        Require.present(thing, "at", at);
        Require.present(thing, "lightSwitch", lightSwitch);
        Require.moreThan(thing, "power", power, Power.ZERO);
        Require.present(thing, "lamp", lamp);
        Require.present(thing, "circuit", circuit);
        Require.present(thing, "phase", phase);
        Require.present(thing, "ahead", ahead);
    }

    @Override
    public Luminaire withCircuit(Optional<CircuitId> newCircuit) {
        return new Luminaire(id, at, lightSwitch, power, lamp, newCircuit, phase, ahead);
    }
}
