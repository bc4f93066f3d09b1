package leat.model.plan;

import java.util.Optional;
import leat.model.id.CircuitId;
import leat.model.power.Circuit;
import leat.model.power.Panel;
import leat.model.power.PowerSupply;
import leat.model.power.Transformer;
import leat.model.power.WiringMethod;
import leat.model.quantity.Current;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;

/** A circuit from its breaker in a panel, or from a tap of a transformer. */
public final class CircuitPart extends Part {

    private final String name;
    private final Fields fields;

    CircuitPart(String name, Fields fields) {
        this.name = name;
        this.fields = fields;
    }

    /** The panel or the transformer that it starts from. */
    public CircuitPart from(String panel) {
        return set("from", panel);
    }

    /** Its rating; left out behind a transformer, the current of the transformer at its rating. */
    public CircuitPart breaker(Current rating) {
        return set("breaker", rating);
    }

    /** Across the load; the panel's if left out, or the lowest tap of the transformer. */
    public CircuitPart voltage(Voltage voltage) {
        return set("voltage", voltage);
    }

    /** Conductors that carry current: 2 if left out, 3 for two poles with a neutral or three phases. */
    public CircuitPart liveWires(int wires) {
        return set("liveWires", wires);
    }

    /** It is protected at its origin against current that leaks to ground. */
    public CircuitPart groundFault() {
        return set("groundFault", true);
    }

    /** Its conductors are a sheathed cable that lies in the ground bare; single wires in conduit if left out, but behind a transformer always a
     * cable. */
    public CircuitPart buriedCable() {
        return set("method", WiringMethod.BURIED_CABLE);
    }

    public CircuitPart phase(Phase phase) {
        return set("phase", phase);
    }

    private CircuitPart set(String field, Object value) {
        return new CircuitPart(name, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        Optional<String> from = fields.find("from", String.class);
        if (from.isPresent()) {
            draft.power().circuit("circuit " + name, from.get(), supply -> made(supply, draft));
        } else {
            draft.has("circuit", name, fields, "from", "breaker");
        }
    }

    private Optional<Circuit> made(PowerSupply supply, YardDraft draft) {
        if (supply instanceof Transformer transformer) {
            Voltage tap = fields.get("voltage", transformer.taps().get(0), Voltage.class);
            Current most = tap.si() > 0 ? transformer.mostCurrent(tap) : Current.ZERO;
            return Optional.of(
                    made(supply, fields.get("breaker", most, Current.class), tap, WiringMethod.BURIED_CABLE));
        }
        if (!draft.has("circuit", name, fields, "breaker")) {
            return Optional.empty();
        }
        Voltage voltage = fields.get("voltage", ((Panel) supply).voltage(), Voltage.class);
        return Optional.of(made(supply, fields.get("breaker", Current.class), voltage, WiringMethod.IN_CONDUIT));
    }

    private Circuit made(PowerSupply supply, Current breaker, Voltage voltage, WiringMethod usual) {
        return new Circuit(
                new CircuitId(name),
                supply.id(),
                breaker,
                voltage,
                fields.get("liveWires", 2, Integer.class),
                fields.get("groundFault", false, Boolean.class),
                fields.get("method", usual, WiringMethod.class),
                fields.get("phase", Phase.NOW, Phase.class));
    }
}
