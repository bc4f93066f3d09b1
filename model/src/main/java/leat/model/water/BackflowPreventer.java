package leat.model.water;

import leat.model.fault.Require;
import leat.model.id.BackflowId;
import leat.model.id.PipeId;
import leat.model.quantity.Length;

/**
 * Keeps irrigation water from running back into drinking water. It stands at the inlet of a run of the main; all that
 * the run feeds is irrigation water.
 *
 * @param on     the run at whose inlet it stands
 * @param device catalogue key, such as {@code bfp-pvb-1}
 * @param height above finished grade; rules say how high each kind must stand
 */
public record BackflowPreventer(BackflowId id, PipeId on, String device, Length height) {

    public BackflowPreventer {
        Require.present("backflow preventer", "id", id);
        Require.present("backflow preventer " + id, "on", on);
        Require.name("backflow preventer " + id, "device", device);
        Require.present("backflow preventer " + id, "height", height);
    }
}
