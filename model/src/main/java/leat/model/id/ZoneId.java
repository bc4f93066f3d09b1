package leat.model.id;

import leat.model.fault.Require;

/** Names one zone; unique among its kind. */
public record ZoneId(String name) implements Id {

    public ZoneId {
        Require.name("zone", name);
    }

    @Override
    public String kind() {
        return "zone";
    }

    @Override
    public String toString() {
        return name;
    }
}
