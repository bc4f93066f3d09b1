package leat.model.id;

import leat.model.fault.Require;

/** Names one switch; unique among its kind. */
public record SwitchId(String name) implements WireEndId {

    public SwitchId {
        Require.name("switch", name);
    }

    @Override
    public String kind() {
        return "switch";
    }

    @Override
    public String toString() {
        return name;
    }
}
