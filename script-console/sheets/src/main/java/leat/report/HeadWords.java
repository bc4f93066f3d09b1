package leat.report;

import leat.model.water.Bubbler;
import leat.model.water.DripLine;
import leat.model.water.Head;
import leat.model.water.Rotor;
import leat.model.water.Spray;

/** The trade's words for the kinds of heads. */
final class HeadWords {

    private HeadWords() {}

    static String shape(Head head) {
        if (head instanceof Rotor) {
            return "rotor";
        }
        if (head instanceof Spray) {
            return "spray";
        }
        if (head instanceof Bubbler) {
            return "bubbler";
        }
        if (head instanceof DripLine) {
            return "drip line";
        }
        throw new AssertionError(head);
    }
}
