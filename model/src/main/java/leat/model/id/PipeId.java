package leat.model.id;

import leat.model.fault.Require;

/** Names one pipe; unique among its kind. */
public record PipeId(String name) implements UpstreamId, LaidId {

    public PipeId {
        Require.name("pipe", name);
    }

    @Override
    public String kind() {
        return "pipe";
    }

    @Override
    public String toString() {
        return name;
    }
}
