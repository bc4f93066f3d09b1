package leat.model.id;

import leat.model.fault.Require;

/** Names one head; unique among its kind. */
public record HeadId(String name) implements Id {

    public HeadId {
        Require.name("head", name);
    }

    @Override
    public String kind() {
        return "head";
    }

    @Override
    public String toString() {
        return name;
    }
}
