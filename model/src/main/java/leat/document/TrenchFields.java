package leat.document;

import java.util.Map;
import leat.model.id.PipeId;
import leat.model.id.SegmentId;
import leat.model.quantity.UnitSystem;
import leat.model.site.Phase;
import leat.model.trench.TrenchSegment;

/** How a trench stands in a document. */
final class TrenchFields {

    private final Places places;

    TrenchFields(Places places) {
        this.places = places;
    }

    static Map<String, Object> written(TrenchSegment trench, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", trench.id())
                .route("route", trench.route())
                .quantity("depth", trench.depth())
                .ids("contents", trench.contents())
                .flag("byHand", trench.byHand())
                .word("phase", trench.phase(), Phase.NOW)
                .fields();
    }

    TrenchSegment read(Json json) {
        FieldReader in = FieldReader.of(json, "trench", places, "id", "route", "depth", "contents", "byHand", "phase");
        return in.named(() -> new TrenchSegment(
                in.id("id", SegmentId::new),
                in.route("route"),
                in.length("depth"),
                in.ids("contents", PipeId::new),
                in.flag("byHand"),
                in.word("phase", Phase.class, Phase.NOW)));
    }
}
