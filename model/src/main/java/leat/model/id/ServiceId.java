package leat.model.id;

import leat.model.fault.Require;

/** Names one existing service; unique among its kind. */
public record ServiceId(String name) implements Id {

    public ServiceId {
        Require.name("existing service", name);
    }

    @Override
    public String kind() {
        return "existing service";
    }

    @Override
    public String toString() {
        return name;
    }
}
