package leat.model.id;

import leat.model.fault.Require;

/** Names one obstacle; unique among its kind. */
public record ObstacleId(String name) implements Id {

    public ObstacleId {
        Require.name("obstacle", name);
    }

    @Override
    public String kind() {
        return "obstacle";
    }

    @Override
    public String toString() {
        return name;
    }
}
