package leat.calc.takeoff;

import java.util.List;
import leat.model.fault.Require;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.site.Phase;

/**
 * How the pieces of one material are cut from its stock.
 *
 * @param key   of the material
 * @param stock length of a stick or coil
 * @param least no cut needs fewer sticks
 */
public record CutList(String key, Phase phase, Length stock, List<CutStick> sticks, Count least) {

    public CutList {
        Require.name("cut list", "key", key);
        Require.present("cut list " + key, "phase", phase);
        Require.moreThan("cut list " + key, "stock", stock, Length.ZERO);
        sticks = Require.entries("cut list " + key, "sticks", sticks);
        Require.present("cut list " + key, "least", least);
    }

    /** Whether no cut with fewer sticks exists. */
    public boolean isFewest() {
        return sticks.size() == (int) least.value();
    }
}
