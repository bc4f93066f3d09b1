package leat.model.plan;

import leat.model.id.CircuitId;
import leat.model.id.PanelId;
import leat.model.power.Circuit;
import leat.model.power.Panel;
import leat.model.power.WiringMethod;
import leat.model.quantity.Current;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;

/** A circuit from its breaker in a panel. */
public final class CircuitPart extends Part {

    private final String name;
    private final Fields fields;

    CircuitPart(String name, Fields fields) {
        this.name = name;
        this.fields = fields;
    }

    /** The panel that it starts from. */
    public CircuitPart from(String panel) {
        return set("from", panel);
    }

    public CircuitPart breaker(Current rating) {
        return set("breaker", rating);
    }

    /** Across the load; the panel's if left out. */
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

    /** Its conductors are a sheathed cable that lies in the ground bare; single wires in conduit if left out. */
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
        if (draft.has("circuit", name, fields, "from", "breaker")) {
            draft.power().circuit("circuit " + name, fields.get("from", String.class), this::made);
        }
    }

    private Circuit made(Panel panel) {
        return new Circuit(
                new CircuitId(name),
                new PanelId(fields.get("from", String.class)),
                fields.get("breaker", Current.class),
                fields.get("voltage", panel.voltage(), Voltage.class),
                fields.get("liveWires", 2, Integer.class),
                fields.get("groundFault", false, Boolean.class),
                fields.get("method", WiringMethod.IN_CONDUIT, WiringMethod.class),
                fields.get("phase", Phase.NOW, Phase.class));
    }
}
