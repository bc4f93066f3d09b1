package leat.model.id;

import leat.model.fault.Require;

/** Names one source; unique among its kind. */
public record SourceId(String name) implements UpstreamId {

    public SourceId {
        Require.name("source", name);
    }

    @Override
    public String kind() {
        return "source";
    }

    @Override
    public String toString() {
        return name;
    }
}
