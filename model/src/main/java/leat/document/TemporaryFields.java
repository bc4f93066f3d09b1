package leat.document;

import java.util.Map;
import leat.model.plan.Temporary;
import leat.model.quantity.UnitSystem;

/** How a temporary arrangement stands in a document. */
final class TemporaryFields {

    private final Places places;

    TemporaryFields(Places places) {
        this.places = places;
    }

    static Map<String, Object> written(Temporary temporary, UnitSystem units) {
        return new FieldWriter(units)
                .text("subject", temporary.subject())
                .text("arrangement", temporary.arrangement())
                .fields();
    }

    Temporary read(Json json) {
        FieldReader in = FieldReader.of(json, "temporary arrangement", places, "subject", "arrangement");
        return in.made(() -> new Temporary(in.text("subject"), in.text("arrangement")));
    }
}
