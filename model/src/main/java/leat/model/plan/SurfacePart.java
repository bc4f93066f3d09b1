package leat.model.plan;

import leat.model.id.SurfaceId;
import leat.model.site.Phase;
import leat.model.site.Surface;
import leat.model.site.SurfaceKind;
import leat.model.site.Watering;

/** A lawn, a bed, paving, a structure or a pond. */
public final class SurfacePart extends Part {

    private final String name;
    private final SurfaceKind kind;
    private final Outline outline;
    private final Fields fields;

    SurfacePart(String name, SurfaceKind kind, Outline outline, Fields fields) {
        this.name = name;
        this.kind = kind;
        this.outline = outline;
        this.fields = fields;
    }

    /** Its texture as the catalogue of soils names it, such as {@code silt loam}. */
    public SurfacePart soil(String texture) {
        return set("soil", texture);
    }

    public SurfacePart planting(String plants) {
        return set("planting", plants);
    }

    public SurfacePart watering(Watering watering) {
        return set("watering", watering);
    }

    public SurfacePart phase(Phase phase) {
        return set("phase", phase);
    }

    private SurfacePart set(String field, Object value) {
        return new SurfacePart(name, kind, outline, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        draft.surface(new Surface(
                new SurfaceId(name),
                kind,
                outline.in(draft.units(), "surface " + name),
                fields.get("watering", kind == SurfaceKind.LAWN ? Watering.HEADS : Watering.NONE, Watering.class),
                fields.find("soil", String.class),
                fields.find("planting", String.class),
                fields.get("phase", Phase.NOW, Phase.class)));
    }
}
