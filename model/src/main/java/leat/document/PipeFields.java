package leat.document;

import java.util.Map;
import leat.model.id.PipeId;
import leat.model.id.SourceId;
import leat.model.id.UpstreamId;
import leat.model.id.ValveId;
import leat.model.quantity.UnitSystem;
import leat.model.site.Phase;
import leat.model.water.PipeRun;

/** How a run of pipe stands in a document. */
final class PipeFields {

    private final Places places;

    PipeFields(Places places) {
        this.places = places;
    }

    static Map<String, Object> written(PipeRun pipe, UnitSystem units) {
        // each kind of name is its own field: {"valve": "V1"}
        FieldWriter from = new FieldWriter(units).id(pipe.from().kind(), pipe.from());
        return new FieldWriter(units)
                .id("id", pipe.id())
                .object("from", from)
                .route("route", pipe.route())
                .text("series", pipe.series())
                .text("size", pipe.size())
                .list("fitted", pipe.fitted())
                .flag("existing", pipe.existing())
                .word("phase", pipe.phase(), Phase.NOW)
                .fields();
    }

    PipeRun read(Json json) {
        FieldReader in = FieldReader.of(
                json, "pipe", places, "id", "from", "route", "series", "size", "fitted", "existing", "phase");
        return in.named(() -> new PipeRun(
                in.id("id", PipeId::new),
                in.object("from", this::from),
                in.route("route"),
                in.text("series"),
                in.optionalText("size"),
                in.texts("fitted"),
                in.flag("existing"),
                in.word("phase", Phase.class, Phase.NOW)));
    }

    private UpstreamId from(Json json) {
        FieldReader in = FieldReader.of(json, "pipe's feed", places, "source", "pipe", "valve");
        if (in.count() != 1) {
            throw in.spot().fault("a pipe is fed by one thing; it must be one of source, pipe, valve with a name");
        }
        if (in.has("source")) {
            return in.id("source", SourceId::new);
        }
        return in.has("pipe") ? in.id("pipe", PipeId::new) : in.id("valve", ValveId::new);
    }
}
