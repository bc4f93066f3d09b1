package leat.model.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Polyline;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.ControllerId;
import leat.model.id.ManifoldId;
import leat.model.id.WireEndId;
import leat.model.power.PowerCable;
import leat.model.power.ValveCable;
import leat.model.site.Phase;

/** The conductors of a circuit from one thing to the next, or the valve wires from a controller to a manifold. */
public final class CablePart extends Part {

    private final String name;
    private final boolean forValves;
    private final Path route;
    private final Fields fields;

    CablePart(String name, boolean forValves, Path route, Fields fields) {
        this.name = name;
        this.forValves = forValves;
        this.route = route;
        this.fields = fields;
    }

    /** The circuit whose conductors they are. */
    public CablePart circuit(String circuit) {
        return set("circuit", circuit);
    }

    /** What it starts at: a panel, a switch or a load; a controller for valve wires. */
    public CablePart from(String thing) {
        return set("from", thing);
    }

    /** What it ends at: a switch or a load; a manifold for valve wires. */
    public CablePart to(String thing) {
        return set("to", thing);
    }

    /** The conduits that it passes through, in its direction. */
    public CablePart through(String... conduits) {
        return set("through", Require.entries("cable " + name, "through", Arrays.asList(conduits)));
    }

    /** Size of its conductors; left out, it is planned. */
    public CablePart conductor(String size) {
        return set("conductor", size);
    }

    /** Valve wires all together: one for each valve, a common wire, and spares. */
    public CablePart strands(int strands) {
        return set("strands", strands);
    }

    /** It lies there already. */
    public CablePart existing() {
        return set("existing", true);
    }

    public CablePart phase(Phase phase) {
        return set("phase", phase);
    }

    private CablePart set(String field, Object value) {
        return new CablePart(name, forValves, route, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        if (forValves) {
            draft.only(
                    "valve wires " + name,
                    fields,
                    "from",
                    "to",
                    "through",
                    "conductor",
                    "strands",
                    "existing",
                    "phase");
            if (draft.has("valve wires", name, fields, "from", "to", "strands")) {
                draft.power().valveCable(valveCable(draft));
            }
        } else {
            draft.only("cable " + name, fields, "circuit", "from", "to", "through", "conductor", "existing", "phase");
            if (draft.has("cable", name, fields, "circuit", "from", "to")) {
                draft.power()
                        .powerCable(
                                "cable " + name,
                                fields.get("from", String.class),
                                fields.get("to", String.class),
                                (from, to) -> powerCable(draft, from, to));
            }
        }
    }

    private ValveCable valveCable(YardDraft draft) {
        return new ValveCable(
                new CableId(name),
                new ControllerId(fields.get("from", String.class)),
                new ManifoldId(fields.get("to", String.class)),
                route(draft),
                conduits(),
                conductor(),
                fields.get("strands", Integer.class),
                fields.get("existing", false, Boolean.class),
                fields.get("phase", Phase.NOW, Phase.class));
    }

    private PowerCable powerCable(YardDraft draft, WireEndId from, WireEndId to) {
        return new PowerCable(
                new CableId(name),
                new CircuitId(fields.get("circuit", String.class)),
                from,
                to,
                route(draft),
                conduits(),
                conductor(),
                fields.get("existing", false, Boolean.class),
                fields.get("phase", Phase.NOW, Phase.class));
    }

    private Polyline route(YardDraft draft) {
        return route.in(draft.units(), "cable " + name);
    }

    private List<ConduitId> conduits() {
        return ((List<?>) fields.get("through", List.of(), List.class))
                .stream().map(one -> new ConduitId((String) one)).toList();
    }

    private Optional<String> conductor() {
        return fields.find("conductor", String.class);
    }
}
