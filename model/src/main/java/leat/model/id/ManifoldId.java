package leat.model.id;

import leat.model.fault.Require;

/** Names one manifold; unique among its kind. */
public record ManifoldId(String name) implements WireEndId {

    public ManifoldId {
        Require.name("manifold", name);
    }

    @Override
    public String kind() {
        return "manifold";
    }

    @Override
    public String toString() {
        return name;
    }
}
