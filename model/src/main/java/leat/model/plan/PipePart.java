package leat.model.plan;

import java.util.List;
import leat.model.id.PipeId;
import leat.model.site.Phase;

/** A run of pipe, of the main or of a lateral, as what feeds it says. */
public final class PipePart extends Part {

    private record Fitted(List<String> devices) {}

    private final String name;
    private final Path route;
    private final Fields fields;

    PipePart(String name, Path route, Fields fields) {
        this.name = name;
        this.route = route;
        this.fields = fields;
    }

    /** What feeds it: the name of a source, of another pipe, or of a zone valve. */
    public PipePart from(String upstream) {
        return set("from", upstream);
    }

    /** Catalogue series, such as {@code PVC Schedule 40}. */
    public PipePart series(String series) {
        return set("series", series);
    }

    /** Trade size, such as {@code 3/4 in}; left out, it is planned. */
    public PipePart size(String size) {
        return set("size", size);
    }

    /** Catalogue keys of strainers, check valves and the like at its inlet, in the direction of the flow. */
    public PipePart fitted(String... devices) {
        return set("fitted", new Fitted(List.of(devices)));
    }

    /** It lies there already. */
    public PipePart existing() {
        return set("existing", true);
    }

    /** The head that stands at its end. */
    public PipePart to(String head) {
        return set("to", head);
    }

    public PipePart phase(Phase phase) {
        return set("phase", phase);
    }

    private PipePart set(String field, Object value) {
        return new PipePart(name, route, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        if (draft.has("pipe", name, fields, "from", "series")) {
            draft.pipes()
                    .add(new PipeDrafts.Draft(
                            new PipeId(name),
                            fields.get("from", String.class),
                            route.in(draft.units(), "pipe " + name),
                            fields.get("series", String.class),
                            fields.find("size", String.class),
                            fields.get("fitted", new Fitted(List.of()), Fitted.class)
                                    .devices(),
                            fields.get("existing", false, Boolean.class),
                            fields.get("phase", Phase.NOW, Phase.class),
                            fields.find("to", String.class)));
        }
    }
}
