package leat.model.id;

import leat.model.fault.Require;

/** Names one transformer; unique among its kind. */
public record TransformerId(String name) implements LoadId, SupplyId {

    public TransformerId {
        Require.name("transformer", name);
    }

    @Override
    public String kind() {
        return "transformer";
    }

    @Override
    public String toString() {
        return name;
    }
}
