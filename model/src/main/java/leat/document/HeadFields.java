package leat.document;

import java.util.Map;
import leat.model.catalog.HeadShape;
import leat.model.geometry.Arc;
import leat.model.id.HeadId;
import leat.model.quantity.Angle;
import leat.model.quantity.Dimension;
import leat.model.quantity.UnitSystem;
import leat.model.water.Bubbler;
import leat.model.water.DripLine;
import leat.model.water.Head;
import leat.model.water.Rotor;
import leat.model.water.Spray;

/** How a head stands in a document. */
final class HeadFields {

    private final Places places;

    HeadFields(Places places) {
        this.places = places;
    }

    static Map<String, Object> written(Head head, UnitSystem units) {
        FieldWriter out = new FieldWriter(units)
                .id("id", head.id())
                .word("kind", shape(head))
                .text("family", head.family());
        if (head instanceof DripLine line) {
            return out.route("path", line.path()).fields();
        }
        out.point("at", head.at());
        head.sector()
                .ifPresent(sector -> out.object("arc", arc(sector.arc(), units)).quantity("radius", sector.radius()));
        return out.fields();
    }

    private static HeadShape shape(Head head) {
        if (head instanceof Rotor) {
            return HeadShape.ROTOR;
        }
        if (head instanceof Spray) {
            return HeadShape.SPRAY;
        }
        return head instanceof Bubbler ? HeadShape.BUBBLER : HeadShape.DRIP_LINE;
    }

    Head read(Json json) {
        HeadShape shape = FieldReader.kind(json, "head", HeadShape.class);
        return switch (shape) {
            case ROTOR, SPRAY -> throwing(json, shape);
            case BUBBLER -> bubbler(json);
            case DRIP_LINE -> dripLine(json);
        };
    }

    private Head throwing(Json json, HeadShape shape) {
        FieldReader in = FieldReader.of(json, Words.of(shape), places, "id", "kind", "family", "at", "arc", "radius");
        HeadId id = id(in);
        return in.named(() -> shape == HeadShape.ROTOR
                ? new Rotor(id, in.text("family"), in.point("at"), in.object("arc", this::arc), in.length("radius"))
                : new Spray(id, in.text("family"), in.point("at"), in.object("arc", this::arc), in.length("radius")));
    }

    private Bubbler bubbler(Json json) {
        FieldReader in = FieldReader.of(json, "bubbler", places, "id", "kind", "family", "at");
        HeadId id = id(in);
        return in.named(() -> new Bubbler(id, in.text("family"), in.point("at")));
    }

    private DripLine dripLine(Json json) {
        FieldReader in = FieldReader.of(json, "drip line", places, "id", "kind", "family", "path");
        HeadId id = id(in);
        return in.named(() -> new DripLine(id, in.text("family"), in.route("path")));
    }

    /** Later complaints speak of a head, whatever its kind. */
    private static HeadId id(FieldReader in) {
        HeadId id = in.id("id", HeadId::new);
        in.knownAs("head " + id);
        return id;
    }

    private static FieldWriter arc(Arc arc, UnitSystem units) {
        return new FieldWriter(units).quantity("start", arc.start()).quantity("sweep", arc.sweep());
    }

    private Arc arc(Json json) {
        FieldReader in = FieldReader.of(json, "arc", places, "start", "sweep");
        return in.made(() -> new Arc(angle(in, "start"), angle(in, "sweep")));
    }

    private static Angle angle(FieldReader in, String name) {
        return in.quantity(name, Dimension.ANGLE, Angle.class);
    }
}
