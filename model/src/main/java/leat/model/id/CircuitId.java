package leat.model.id;

import leat.model.fault.Require;

/** Names one circuit; unique among its kind. */
public record CircuitId(String name) implements Id {

    public CircuitId {
        Require.name("circuit", name);
    }

    @Override
    public String kind() {
        return "circuit";
    }

    @Override
    public String toString() {
        return name;
    }
}
