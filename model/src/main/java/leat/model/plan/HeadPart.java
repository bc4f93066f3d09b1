package leat.model.plan;

import java.util.function.Function;
import leat.model.catalog.HeadShape;
import leat.model.geometry.Arc;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.id.HeadId;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;
import leat.model.quantity.UnitSystem;
import leat.model.water.Bubbler;
import leat.model.water.DripLine;
import leat.model.water.Head;
import leat.model.water.Rotor;
import leat.model.water.Spray;

/** A rotor, a spray, a bubbler or a drip line, stated by hand. */
public final class HeadPart extends Part {

    private final String name;
    private final HeadShape shape;
    private final Function<UnitSystem, Polyline> path;
    private final Function<UnitSystem, Point> at;
    private final Fields fields;

    private HeadPart(
            String name,
            HeadShape shape,
            Function<UnitSystem, Point> at,
            Function<UnitSystem, Polyline> path,
            Fields fields) {
        this.name = name;
        this.shape = shape;
        this.at = at;
        this.path = path;
        this.fields = fields;
    }

    static HeadPart standing(String name, HeadShape shape, Place at) {
        return new HeadPart(
                name,
                shape,
                at::in,
                units -> {
                    throw new IllegalStateException("a head that stands has no path");
                },
                Fields.NONE);
    }

    static HeadPart lying(String name, Path path) {
        return new HeadPart(
                name,
                HeadShape.DRIP_LINE,
                units -> path.in(units).start(),
                units -> path.in(units, "drip line " + name),
                Fields.NONE);
    }

    /** Key of its family in the catalogue of heads, such as {@code spray-3_7}. */
    public HeadPart family(String key) {
        return set("family", key);
    }

    /** Degrees: bearing of the edge it starts at, and its clockwise sweep. */
    public HeadPart arc(double startDegrees, double sweepDegrees) {
        return set("arc", Arc.degrees(startDegrees, sweepDegrees));
    }

    public HeadPart arc(Angle start, Angle sweep) {
        return set("arc", new Arc(start, sweep));
    }

    public HeadPart fullCircle() {
        return set("arc", Arc.FULL);
    }

    public HeadPart radius(Length radius) {
        return set("radius", radius);
    }

    private HeadPart set(String field, Object value) {
        return new HeadPart(name, shape, at, path, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        boolean throwsWater = shape == HeadShape.ROTOR || shape == HeadShape.SPRAY;
        if (!throwsWater) {
            draft.only(shape.label() + " " + name, fields, "family");
        }
        boolean finished = throwsWater
                ? draft.has("head", name, fields, "family", "arc", "radius")
                : draft.has("head", name, fields, "family");
        if (finished) {
            draft.head(made(draft.units()));
        }
    }

    private Head made(UnitSystem units) {
        HeadId id = new HeadId(name);
        String family = fields.get("family", String.class);
        return switch (shape) {
            case ROTOR ->
                new Rotor(
                        id, family, at.apply(units), fields.get("arc", Arc.class), fields.get("radius", Length.class));
            case SPRAY ->
                new Spray(
                        id, family, at.apply(units), fields.get("arc", Arc.class), fields.get("radius", Length.class));
            case BUBBLER -> new Bubbler(id, family, at.apply(units));
            case DRIP_LINE -> new DripLine(id, family, path.apply(units));
        };
    }
}
