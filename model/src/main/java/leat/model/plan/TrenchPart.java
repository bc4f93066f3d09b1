package leat.model.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import leat.model.fault.Require;
import leat.model.id.CableId;
import leat.model.id.ConduitId;
import leat.model.id.LaidId;
import leat.model.id.PipeId;
import leat.model.id.SegmentId;
import leat.model.quantity.Length;
import leat.model.site.Phase;
import leat.model.trench.TrenchSegment;

/** A piece of trench. */
public final class TrenchPart extends Part {

    private final String name;
    private final Path route;
    private final Fields fields;

    TrenchPart(String name, Path route, Fields fields) {
        this.name = name;
        this.route = route;
        this.fields = fields;
    }

    /** From finished grade to its bottom. */
    public TrenchPart depth(Length depth) {
        return set("depth", depth);
    }

    /** Names of the pipes that lie in it. */
    public TrenchPart holds(String... pipes) {
        return set("holds", Require.entries("trench " + name, "holds", Arrays.asList(pipes)));
    }

    public TrenchPart holdsConduits(String... conduits) {
        return set("holdsConduits", Require.entries("trench " + name, "holdsConduits", Arrays.asList(conduits)));
    }

    /** Names of the cables that lie in it bare. */
    public TrenchPart holdsCables(String... cables) {
        return set("holdsCables", Require.entries("trench " + name, "holdsCables", Arrays.asList(cables)));
    }

    public TrenchPart byHand() {
        return set("byHand", true);
    }

    public TrenchPart phase(Phase phase) {
        return set("phase", phase);
    }

    private TrenchPart set(String field, Object value) {
        return new TrenchPart(name, route, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        if (draft.has("trench", name, fields, "depth")) {
            List<LaidId> contents = new ArrayList<>();
            addTo(contents, "holds", PipeId::new);
            addTo(contents, "holdsConduits", ConduitId::new);
            addTo(contents, "holdsCables", CableId::new);
            draft.trench(new TrenchSegment(
                    new SegmentId(name),
                    route.in(draft.units(), "trench " + name),
                    fields.get("depth", Length.class),
                    contents,
                    fields.get("byHand", false, Boolean.class),
                    fields.get("phase", Phase.NOW, Phase.class)));
        }
    }

    private void addTo(List<LaidId> contents, String field, Function<String, LaidId> id) {
        for (Object laid : fields.get(field, List.of(), List.class)) {
            contents.add(id.apply((String) laid));
        }
    }
}
