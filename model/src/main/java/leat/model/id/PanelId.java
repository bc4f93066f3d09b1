package leat.model.id;

import leat.model.fault.Require;

/** Names one panel; unique among its kind. */
public record PanelId(String name) implements SupplyId {

    public PanelId {
        Require.name("panel", name);
    }

    @Override
    public String kind() {
        return "panel";
    }

    @Override
    public String toString() {
        return name;
    }
}
