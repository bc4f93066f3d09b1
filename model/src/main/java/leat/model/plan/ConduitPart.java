package leat.model.plan;

import java.util.ArrayList;
import java.util.List;
import leat.model.id.ConduitId;
import leat.model.power.CodeFamily;
import leat.model.power.Conduit;
import leat.model.power.WireGroup;
import leat.model.site.Phase;

/** A conduit; spare unless cables pass through it. */
public final class ConduitPart extends Part {

    private final String name;
    private final Path route;
    private final Fields fields;

    ConduitPart(String name, Path route, Fields fields) {
        this.name = name;
        this.route = route;
        this.fields = fields;
    }

    /** Series of the catalogue of conduits; rigid plastic or corrugated duct by the family of codes if left out. */
    public ConduitPart series(String series) {
        return set("series", series);
    }

    /** Trade size, such as {@code 3/4}; left out, it is planned. */
    public ConduitPart size(String size) {
        return set("size", size);
    }

    /** It lies there already. */
    public ConduitPart existing() {
        return set("existing", true);
    }

    /** Wires that lie in it already and stay. */
    public ConduitPart occupied(String size, int wires) {
        List<WireGroup> groups = new ArrayList<>(groups());
        groups.add(new WireGroup(size, wires));
        return set("occupied", List.copyOf(groups));
    }

    public ConduitPart phase(Phase phase) {
        return set("phase", phase);
    }

    private ConduitPart set(String field, Object value) {
        return new ConduitPart(name, route, fields.with(field, value));
    }

    private List<WireGroup> groups() {
        List<?> groups = fields.get("occupied", List.of(), List.class);
        return groups.stream().map(WireGroup.class::cast).toList();
    }

    @Override
    void addTo(YardDraft draft) {
        draft.power()
                .conduit(code -> new Conduit(
                        new ConduitId(name),
                        route.in(draft.units(), "conduit " + name),
                        fields.get("series", usualSeries(code), String.class),
                        fields.find("size", String.class),
                        fields.get("existing", false, Boolean.class),
                        groups(),
                        fields.get("phase", Phase.NOW, Phase.class)));
    }

    private static String usualSeries(CodeFamily code) {
        return code == CodeFamily.NFPA_70 ? Conduit.USUAL_US : Conduit.USUAL_METRIC;
    }
}
