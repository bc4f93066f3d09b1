package leat.document;

import java.util.Map;
import leat.model.id.CircuitId;
import leat.model.id.OutletId;
import leat.model.id.SurfaceId;
import leat.model.id.TransformerId;
import leat.model.power.Ahead;
import leat.model.power.LampSupply;
import leat.model.power.Transformer;
import leat.model.quantity.Dimension;
import leat.model.quantity.Power;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;

/** Transformers, and what lamps ask of them. */
final class TransformerFields {

    private final Places places;

    TransformerFields(Places places) {
        this.places = places;
    }

    static Map<String, Object> written(Transformer transformer, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", transformer.id())
                .point("at", transformer.at())
                .id("inside", transformer.inside())
                .quantity("rating", transformer.rating())
                .list("taps", Lists.map(transformer.taps(), tap -> Units.write(tap, units)))
                .id("plug", transformer.plug())
                .id("circuit", transformer.circuit())
                .word("phase", transformer.phase(), Phase.NOW)
                .word("ahead", transformer.ahead(), Ahead.NOTHING)
                .fields();
    }

    Transformer transformer(Json json) {
        FieldReader in = FieldReader.of(
                json,
                "transformer",
                places,
                "id",
                "at",
                "inside",
                "rating",
                "taps",
                "plug",
                "circuit",
                "phase",
                "ahead");
        return in.named(() -> new Transformer(
                in.id("id", TransformerId::new),
                in.point("at"),
                in.optionalId("inside", SurfaceId::new),
                in.quantity("rating", Dimension.POWER, Power.class),
                in.quantities("taps", Dimension.VOLTAGE, Voltage.class),
                in.optionalId("plug", OutletId::new),
                in.optionalId("circuit", CircuitId::new),
                in.word("phase", Phase.class, Phase.NOW),
                in.word("ahead", Ahead.class, Ahead.NOTHING)));
    }

    static Map<String, Object> lamp(LampSupply lamp, UnitSystem units) {
        return new FieldWriter(units)
                .id("transformer", lamp.transformer())
                .quantity("least", lamp.least())
                .quantity("most", lamp.most())
                .fields();
    }

    LampSupply lamp(Json json) {
        FieldReader in = FieldReader.of(json, "lamp", places, "transformer", "least", "most");
        return in.made(() -> new LampSupply(
                in.id("transformer", TransformerId::new),
                in.quantity("least", Dimension.VOLTAGE, Voltage.class),
                in.quantity("most", Dimension.VOLTAGE, Voltage.class)));
    }
}
