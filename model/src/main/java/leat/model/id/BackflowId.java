package leat.model.id;

import leat.model.fault.Require;

/** Names one backflow preventer; unique among its kind. */
public record BackflowId(String name) implements Id {

    public BackflowId {
        Require.name("backflow preventer", name);
    }

    @Override
    public String kind() {
        return "backflow preventer";
    }

    @Override
    public String toString() {
        return name;
    }
}
