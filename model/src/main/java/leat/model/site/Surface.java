package leat.model.site;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Region;
import leat.model.id.SurfaceId;

/**
 * A piece of ground with one cover.
 *
 * @param soil     texture as the catalogue of soils has it, such as {@code silt loam}; empty when not known
 * @param planting what grows there, in the user's words; empty when nothing or not said
 */
public record Surface(
        SurfaceId id,
        SurfaceKind kind,
        Region region,
        Watering watering,
        Optional<String> soil,
        Optional<String> planting,
        Phase phase) {

    public Surface {
        Require.present("surface", "id", id);
        String thing = "surface " + id;
        Require.present(thing, "kind", kind);
        Require.present(thing, "region", region);
        Require.present(thing, "watering", watering);
        Require.present(thing, "soil", soil);
        soil.ifPresent(texture -> Require.name(thing, "soil", texture));
        Require.present(thing, "planting", planting);
        Require.present(thing, "phase", phase);
    }

    public boolean isLawn() {
        return kind == SurfaceKind.LAWN;
    }
}
