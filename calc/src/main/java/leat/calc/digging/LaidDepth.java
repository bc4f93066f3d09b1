package leat.calc.digging;

import leat.model.fault.Require;
import leat.model.id.LaidId;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.site.Phase;

/**
 * How one thing lies in a trench.
 *
 * @param layer   1 for the lowest; what has a higher number is laid when the earth below it is back
 * @param outside its diameter
 * @param cover   from finished grade to its top
 * @param wanted  the least cover that rules ask for it
 */
public record LaidDepth(
        LaidId id, LaidKind kind, Phase phase, Count layer, Length outside, Length cover, Length wanted) {

    public LaidDepth {
        Require.present("laid", "id", id);
        Require.present("laid " + id, "kind", kind);
        Require.present("laid " + id, "phase", phase);
        Require.present("laid " + id, "layer", layer);
        Require.present("laid " + id, "outside", outside);
        Require.present("laid " + id, "cover", cover);
        Require.present("laid " + id, "wanted", wanted);
    }
}
