package leat.model.id;

import leat.model.fault.Require;

/** Names one dig zone; unique among its kind. */
public record DigZoneId(String name) implements Id {

    public DigZoneId {
        Require.name("digging rule", name);
    }

    @Override
    public String kind() {
        return "digging rule";
    }

    @Override
    public String toString() {
        return name;
    }
}
