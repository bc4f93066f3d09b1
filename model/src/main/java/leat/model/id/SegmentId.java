package leat.model.id;

import leat.model.fault.Require;

/** Names one trench segment; unique among its kind. */
public record SegmentId(String name) implements Id {

    public SegmentId {
        Require.name("trench segment", name);
    }

    @Override
    public String kind() {
        return "trench segment";
    }

    @Override
    public String toString() {
        return name;
    }
}
