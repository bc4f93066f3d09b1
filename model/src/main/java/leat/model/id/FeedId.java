package leat.model.id;

import leat.model.fault.Require;

/** Names one structure feed; unique among its kind. */
public record FeedId(String name) implements LoadId {

    public FeedId {
        Require.name("structure feed", name);
    }

    @Override
    public String kind() {
        return "structure feed";
    }

    @Override
    public String toString() {
        return name;
    }
}
