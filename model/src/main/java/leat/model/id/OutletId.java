package leat.model.id;

import leat.model.fault.Require;

/** Names one outlet; unique among its kind. */
public record OutletId(String name) implements LoadId {

    public OutletId {
        Require.name("outlet", name);
    }

    @Override
    public String kind() {
        return "outlet";
    }

    @Override
    public String toString() {
        return name;
    }
}
