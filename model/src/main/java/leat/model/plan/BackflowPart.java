package leat.model.plan;

import leat.model.id.BackflowId;
import leat.model.id.PipeId;
import leat.model.quantity.Length;
import leat.model.water.BackflowPreventer;

/** A backflow preventer at the inlet of a pipe. */
public final class BackflowPart extends Part {

    private final String name;
    private final Fields fields;

    BackflowPart(String name, Fields fields) {
        this.name = name;
        this.fields = fields;
    }

    /** The pipe of the main at whose inlet it stands. */
    public BackflowPart on(String pipe) {
        return set("on", pipe);
    }

    /** Catalogue key, such as {@code bfp-pvb-1}. */
    public BackflowPart device(String key) {
        return set("device", key);
    }

    /** Above finished grade. */
    public BackflowPart height(Length height) {
        return set("height", height);
    }

    private BackflowPart set(String field, Object value) {
        return new BackflowPart(name, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        if (draft.has("backflow preventer", name, fields, "on", "device", "height")) {
            PipeId on = new PipeId(fields.get("on", String.class));
            draft.backflow(new BackflowPreventer(
                    new BackflowId(name), on, fields.get("device", String.class), fields.get("height", Length.class)));
        }
    }
}
