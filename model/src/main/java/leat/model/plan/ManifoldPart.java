package leat.model.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.model.fault.Require;
import leat.model.id.ManifoldId;
import leat.model.id.PipeId;
import leat.model.id.ValveId;
import leat.model.water.Manifold;
import leat.model.water.ZoneValve;

/** A manifold with its valves. */
public final class ManifoldPart extends Part {

    private static final String USUAL_VALVE = "valve-1";

    private final String name;
    private final Place at;
    private final Fields fields;

    ManifoldPart(String name, Place at, Fields fields) {
        this.name = name;
        this.at = at;
        this.fields = fields;
    }

    /** The pipe of the main that feeds it; left out, it is planned. */
    public ManifoldPart on(String pipe) {
        return set("on", pipe);
    }

    /** Names of the valves that zones use. */
    public ManifoldPart valves(String... names) {
        return set("valves", Require.entries("manifold " + name, "valves", Arrays.asList(names)));
    }

    /** Names of valves that are built in now for zones to come. */
    public ManifoldPart spareValves(String... names) {
        return set("spares", Require.entries("manifold " + name, "spareValves", Arrays.asList(names)));
    }

    /** Catalogue key of its valves; one-inch ones if left out. */
    public ManifoldPart device(String key) {
        return set("device", key);
    }

    private ManifoldPart set(String field, Object value) {
        return new ManifoldPart(name, at, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        List<ZoneValve> valves = new ArrayList<>();
        add("valves", false, valves);
        add("spares", true, valves);
        draft.manifold(new Manifold(
                new ManifoldId(name),
                at.in(draft.units()),
                fields.find("on", String.class).map(PipeId::new),
                valves));
    }

    private void add(String field, boolean spare, List<ZoneValve> valves) {
        String device = fields.get("device", USUAL_VALVE, String.class);
        for (Object valve : fields.get(field, List.of(), List.class)) {
            valves.add(new ZoneValve(new ValveId((String) valve), device, spare));
        }
    }
}
