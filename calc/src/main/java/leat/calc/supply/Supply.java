package leat.calc.supply;

import leat.calc.Progress;
import leat.model.plan.Site;

/** Whether the water system hangs together. A calculation: measures and changes nothing. */
public final class Supply {

    private Supply() {}

    /** Looks at each part once; a yard without water has no findings. */
    public static SupplyResult run(Site site, SupplyParameters parameters, Progress progress) {
        return new SupplyCheck(site).result();
    }
}
