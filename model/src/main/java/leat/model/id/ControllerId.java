package leat.model.id;

import leat.model.fault.Require;

/** Names one controller; unique among its kind. */
public record ControllerId(String name) implements LoadId {

    public ControllerId {
        Require.name("controller", name);
    }

    @Override
    public String kind() {
        return "controller";
    }

    @Override
    public String toString() {
        return name;
    }
}
