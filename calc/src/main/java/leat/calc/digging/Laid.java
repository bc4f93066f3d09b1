package leat.calc.digging;

import leat.model.id.LaidId;
import leat.model.site.Phase;

/**
 * One thing that is laid in a trench, before it is known where in it.
 *
 * @param coverM the least from finished grade to its top
 */
record Laid(LaidId id, LaidKind kind, Phase phase, double outsideM, double coverM) {

    boolean isPower() {
        return kind == LaidKind.POWER;
    }

    /** The least depth of its underside. */
    double reachM() {
        return coverM + outsideM;
    }
}
