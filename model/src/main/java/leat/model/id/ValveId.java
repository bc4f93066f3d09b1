package leat.model.id;

import leat.model.fault.Require;

/** Names one valve; unique among its kind. */
public record ValveId(String name) implements UpstreamId {

    public ValveId {
        Require.name("valve", name);
    }

    @Override
    public String kind() {
        return "valve";
    }

    @Override
    public String toString() {
        return name;
    }
}
