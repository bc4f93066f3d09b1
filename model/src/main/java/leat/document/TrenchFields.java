package leat.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leat.model.id.CableId;
import leat.model.id.ConduitId;
import leat.model.id.Id;
import leat.model.id.LaidId;
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
                .ids("contents", trench.pipes())
                .ids("conduits", laid(trench, ConduitId.class))
                .ids("cables", laid(trench, CableId.class))
                .flag("byHand", trench.byHand())
                .word("phase", trench.phase(), Phase.NOW)
                .fields();
    }

    private static List<? extends Id> laid(TrenchSegment trench, Class<? extends LaidId> kind) {
        return trench.contents().stream().filter(kind::isInstance).toList();
    }

    TrenchSegment read(Json json) {
        FieldReader in = FieldReader.of(
                json, "trench", places, "id", "route", "depth", "contents", "conduits", "cables", "byHand", "phase");
        List<LaidId> contents = new ArrayList<>(in.ids("contents", PipeId::new));
        contents.addAll(in.ids("conduits", ConduitId::new));
        contents.addAll(in.ids("cables", CableId::new));
        return in.named(() -> new TrenchSegment(
                in.id("id", SegmentId::new),
                in.route("route"),
                in.length("depth"),
                contents,
                in.flag("byHand"),
                in.word("phase", Phase.class, Phase.NOW)));
    }
}
