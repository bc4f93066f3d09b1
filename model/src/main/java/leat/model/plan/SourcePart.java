package leat.model.plan;

import leat.model.geometry.Point;
import leat.model.id.SourceId;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;
import leat.model.water.FlowTest;
import leat.model.water.Mains;
import leat.model.water.Pump;
import leat.model.water.Tank;

/** A public supply, a pump or a raised tank. */
public final class SourcePart extends Part {

    /** Which source it becomes. */
    enum Kind {
        MAINS,
        PUMP,
        TANK
    }

    private final String name;
    private final Kind kind;
    private final Place at;
    private final Fields fields;

    SourcePart(String name, Kind kind, Place at, Fields fields) {
        this.name = name;
        this.kind = kind;
        this.at = at;
        this.fields = fields;
    }

    /** Of mains: pressure while nothing flows. */
    public SourcePart staticPressure(Pressure pressure) {
        return set("staticPressure", pressure);
    }

    /** Of mains: what was left while that much flowed. */
    public SourcePart flowTest(Flow flow, Pressure residual) {
        return set("flowTest", new FlowTest(flow, residual));
    }

    /** Of a pump: pressure against a closed valve. */
    public SourcePart shutOff(Pressure pressure) {
        return set("shutOff", pressure);
    }

    /** Of a pump: a flow that it gives, and the pressure there. */
    public SourcePart duty(Flow flow, Pressure pressure) {
        return set("duty", flow).set("dutyPressure", pressure);
    }

    /** Of a pump: how far the lowest water that it draws lies below it; its pressures are then what it adds. */
    public SourcePart lift(Length height) {
        return set("lift", height);
    }

    /** Of a tank: least height of the water above the outlet. */
    public SourcePart waterLevel(Length height) {
        return set("waterLevel", height);
    }

    /** Catalogue key of the meter behind the outlet, such as {@code meter-3_4}. */
    public SourcePart meter(String device) {
        return set("meter", device);
    }

    private SourcePart set(String field, Object value) {
        return new SourcePart(name, kind, at, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        SourceId id = new SourceId(name);
        Point point = at.in(draft.units());
        var meter = fields.find("meter", String.class);
        switch (kind) {
            case MAINS -> {
                draft.only("mains " + name, fields, "staticPressure", "flowTest", "meter");
                if (draft.has("mains", name, fields, "staticPressure")) {
                    Pressure pressure = fields.get("staticPressure", Pressure.class);
                    draft.source(new Mains(id, point, pressure, fields.find("flowTest", FlowTest.class), meter));
                }
            }
            case PUMP -> {
                draft.only("pump " + name, fields, "shutOff", "duty", "dutyPressure", "lift", "meter");
                if (draft.has("pump", name, fields, "shutOff", "duty")) {
                    Pressure shutOff = fields.get("shutOff", Pressure.class);
                    Flow duty = fields.get("duty", Flow.class);
                    Pressure there = fields.get("dutyPressure", Pressure.class);
                    Length lift = fields.get("lift", Length.ZERO, Length.class);
                    draft.source(new Pump(id, point, shutOff, duty, there, lift, meter));
                }
            }
            case TANK -> {
                draft.only("tank " + name, fields, "waterLevel", "meter");
                if (draft.has("tank", name, fields, "waterLevel")) {
                    draft.source(new Tank(id, point, fields.get("waterLevel", Length.class), meter));
                }
            }
        }
    }
}
