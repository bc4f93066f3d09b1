package leat.model.plan;

import java.util.Arrays;
import java.util.List;
import leat.model.fault.Require;
import leat.model.id.HeadId;
import leat.model.id.ValveId;
import leat.model.id.ZoneId;
import leat.model.site.Phase;
import leat.model.water.Zone;

/** Heads that run together. */
public final class ZonePart extends Part {

    private final String name;
    private final Fields fields;

    ZonePart(String name, Fields fields) {
        this.name = name;
        this.fields = fields;
    }

    public ZonePart valve(String valve) {
        return set("valve", valve);
    }

    public ZonePart heads(String... names) {
        return set("heads", Require.entries("zone " + name, "heads", Arrays.asList(names)));
    }

    public ZonePart phase(Phase phase) {
        return set("phase", phase);
    }

    private ZonePart set(String field, Object value) {
        return new ZonePart(name, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        if (draft.has("zone", name, fields, "valve")) {
            List<?> names = fields.get("heads", List.of(), List.class);
            draft.zone(new Zone(
                    new ZoneId(name),
                    new ValveId(fields.get("valve", String.class)),
                    names.stream().map(head -> new HeadId((String) head)).toList(),
                    fields.get("phase", Phase.NOW, Phase.class)));
        }
    }
}
