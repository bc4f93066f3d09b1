package leat.model.id;

import leat.model.fault.Require;

/** Names one limit line; unique among its kind. */
public record LineId(String name) implements Id {

    public LineId {
        Require.name("limit line", name);
    }

    @Override
    public String kind() {
        return "limit line";
    }

    @Override
    public String toString() {
        return name;
    }
}
