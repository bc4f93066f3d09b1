package leat.model.finding;

import leat.model.fault.Require;
import leat.model.quantity.Quantity;
import leat.model.quantity.Ratio;

/**
 * Proof beside an optimised answer: no design can have less than {@code least}.
 *
 * @param reached what the answer has
 * @param least   proven bound on what any answer has; at most {@code reached}
 * @param measure what is counted, such as {@code heads} or {@code trench length}
 */
public record Bound(String measure, Quantity reached, Quantity least) {

    public Bound {
        Require.name("bound", "measure", measure);
        Require.present("bound", "reached", reached);
        Require.present("bound", "least", least);
    }

    /** How far the answer may be from the best one, as a share of the answer; 0 is proven best. */
    public Ratio gap() {
        return Ratio.of(reached.si() == 0 ? 0 : (reached.si() - least.si()) / reached.si());
    }
}
