package leat.document;

import java.util.Map;
import java.util.Optional;
import leat.model.id.SourceId;
import leat.model.quantity.Dimension;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;
import leat.model.quantity.UnitSystem;
import leat.model.water.FlowTest;
import leat.model.water.Mains;
import leat.model.water.Pump;
import leat.model.water.Source;
import leat.model.water.Tank;

/** How a source stands in a document. */
final class SourceFields {

    private enum Kind {
        MAINS,
        PUMP,
        TANK
    }

    private final Places places;

    SourceFields(Places places) {
        this.places = places;
    }

    static Map<String, Object> written(Source source, UnitSystem units) {
        FieldWriter out = new FieldWriter(units).id("id", source.id());
        if (source instanceof Mains mains) {
            out.word("kind", Kind.MAINS).point("at", mains.at()).quantity("staticPressure", mains.staticPressure());
            mains.flowTest().ifPresent(test -> out.object("flowTest", flowTest(test, units)));
        } else if (source instanceof Pump pump) {
            out.word("kind", Kind.PUMP)
                    .point("at", pump.at())
                    .quantity("shutOff", pump.shutOff())
                    .quantity("duty", pump.duty())
                    .quantity("dutyPressure", pump.dutyPressure());
            if (pump.lift().metres() != 0) {
                out.quantity("lift", pump.lift());
            }
        } else if (source instanceof Tank tank) {
            out.word("kind", Kind.TANK).point("at", tank.at()).quantity("waterLevel", tank.waterLevel());
        } else {
            throw new AssertionError(source);
        }
        return out.text("meter", source.meter()).fields();
    }

    Source read(Json json) {
        return switch (FieldReader.kind(json, "source", Kind.class)) {
            case MAINS -> mains(json);
            case PUMP -> pump(json);
            case TANK -> tank(json);
        };
    }

    private Mains mains(Json json) {
        FieldReader in =
                FieldReader.of(json, "mains", places, "id", "kind", "at", "staticPressure", "flowTest", "meter");
        SourceId id = in.id("id", SourceId::new);
        in.knownAs("source " + id);
        Optional<FlowTest> test = in.optional("flowTest", this::flowTest);
        return in.named(
                () -> new Mains(id, in.point("at"), pressure(in, "staticPressure"), test, in.optionalText("meter")));
    }

    private static FieldWriter flowTest(FlowTest test, UnitSystem units) {
        return new FieldWriter(units).quantity("flow", test.flow()).quantity("residual", test.residual());
    }

    private FlowTest flowTest(Json json) {
        FieldReader in = FieldReader.of(json, "flow test", places, "flow", "residual");
        return in.made(() -> new FlowTest(in.quantity("flow", Dimension.FLOW, Flow.class), pressure(in, "residual")));
    }

    private Pump pump(Json json) {
        FieldReader in = FieldReader.of(
                json, "pump", places, "id", "kind", "at", "shutOff", "duty", "dutyPressure", "lift", "meter");
        SourceId id = in.id("id", SourceId::new);
        in.knownAs("source " + id);
        return in.named(() -> new Pump(
                id,
                in.point("at"),
                pressure(in, "shutOff"),
                in.quantity("duty", Dimension.FLOW, Flow.class),
                pressure(in, "dutyPressure"),
                in.has("lift") ? in.length("lift") : Length.ZERO,
                in.optionalText("meter")));
    }

    private Tank tank(Json json) {
        FieldReader in = FieldReader.of(json, "tank", places, "id", "kind", "at", "waterLevel", "meter");
        SourceId id = in.id("id", SourceId::new);
        in.knownAs("source " + id);
        return in.named(() -> new Tank(id, in.point("at"), in.length("waterLevel"), in.optionalText("meter")));
    }

    private static Pressure pressure(FieldReader in, String name) {
        return in.quantity(name, Dimension.PRESSURE, Pressure.class);
    }
}
