package leat.model.id;

import leat.model.fault.Require;

/** Names one conduit; unique among its kind. */
public record ConduitId(String name) implements LaidId {

    public ConduitId {
        Require.name("conduit", name);
    }

    @Override
    public String kind() {
        return "conduit";
    }

    @Override
    public String toString() {
        return name;
    }
}
