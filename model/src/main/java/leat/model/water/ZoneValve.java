package leat.model.water;

import leat.model.fault.Require;
import leat.model.id.ValveId;

/**
 * An electric valve of a manifold.
 *
 * @param device catalogue key, such as {@code valve-1}
 * @param spare  built in now for a zone that comes later; feeds none
 */
public record ZoneValve(ValveId id, String device, boolean spare) {

    public ZoneValve {
        Require.present("valve", "id", id);
        Require.name("valve " + id, "device", device);
    }
}
