package leat.model.id;

import leat.model.fault.Require;

/** Names one dig zone; unique among its kind. */
public record DigZoneId(String name) implements Id {

    public DigZoneId {
        Require.name("dig zone", name);
    }

    @Override
    public String kind() {
        return "dig zone";
    }

    @Override
    public String toString() {
        return name;
    }
}
