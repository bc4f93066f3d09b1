package leat.calc;

import leat.model.fault.Require;
import leat.model.quantity.Ratio;

/**
 * What a metre of trench costs, as a multiple of a metre in lawn; the dearest of what is there counts. Defaults are common
 * practice, no source.
 *
 * @param bed          planted beds, at least 1
 * @param paving       under or through paving, at least 1
 * @param handDig      by hand, in hand-dig zones and near lines in the ground, at least 1
 * @param roots        by hand between roots, at least 1
 * @param sharedTrench another pipe or wire in a trench that is dug anyhow, 0 to 1
 */
public record DiggingCosts(Ratio bed, Ratio paving, Ratio handDig, Ratio roots, Ratio sharedTrench) {

    public DiggingCosts {
        Require.atLeast("digging costs", "bed", bed, Ratio.of(1));
        Require.atLeast("digging costs", "paving", paving, Ratio.of(1));
        Require.atLeast("digging costs", "handDig", handDig, Ratio.of(1));
        Require.atLeast("digging costs", "roots", roots, Ratio.of(1));
        Require.atLeast("digging costs", "sharedTrench", sharedTrench, Ratio.ZERO);
    }

    public static DiggingCosts defaults() {
        return new DiggingCosts(Ratio.of(1.5), Ratio.of(6), Ratio.of(3), Ratio.of(4), Ratio.of(0.1));
    }
}
