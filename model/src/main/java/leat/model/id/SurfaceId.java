package leat.model.id;

import leat.model.fault.Require;

/** Names one surface; unique among its kind. */
public record SurfaceId(String name) implements Id {

    public SurfaceId {
        Require.name("surface", name);
    }

    @Override
    public String kind() {
        return "surface";
    }

    @Override
    public String toString() {
        return name;
    }
}
