package leat.calc.wiring;

import leat.calc.Progress;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Ledger;
import leat.model.id.Id;
import leat.model.plan.Site;

/**
 * The calculation that looks over power and control as they stand, given or planned: currents, voltage drops, ampacity,
 * how full conduits are and how deep they lie, protection, valve wires.
 */
public final class WiringReview {

    private WiringReview() {}

    /** Measures all circuits, cables and conduits, and changes nothing. */
    public static WiringResult run(Site site, WiringReviewParameters parameters, Progress progress) {
        return new WiringFigures(site).look(progress);
    }

    /**
     * How a figure came about; the last line equals the figure of the result to the last bit.
     *
     * @param figure {@code current}, {@code drop}, {@code voltage}, {@code load}, {@code ampacity} or {@code fill}
     * @throws InvalidValueException if the thing has no such figure, or it is not known yet
     */
    public static Ledger why(Site site, WiringReviewParameters parameters, Id id, String figure) {
        return new WiringLedger(site).why(id, figure);
    }
}
