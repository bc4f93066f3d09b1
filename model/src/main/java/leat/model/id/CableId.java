package leat.model.id;

import leat.model.fault.Require;

/** Names one cable; unique among its kind. */
public record CableId(String name) implements LaidId {

    public CableId {
        Require.name("cable", name);
    }

    @Override
    public String kind() {
        return "cable";
    }

    @Override
    public String toString() {
        return name;
    }
}
