package leat.model.water;

import java.util.Optional;
import leat.model.fault.Require;

/**
 * What the watering has to go by.
 *
 * @param climate key of a station of the catalogue; empty when not said
 */
public record WateringNeeds(Optional<String> climate) {

    public static final WateringNeeds NONE = new WateringNeeds(Optional.empty());

    public WateringNeeds {
        Require.present("watering", "climate", climate);
    }
}
