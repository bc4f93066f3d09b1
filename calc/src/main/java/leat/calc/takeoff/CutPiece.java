package leat.calc.takeoff;

import leat.model.fault.Require;
import leat.model.id.Id;
import leat.model.quantity.Length;

/**
 * A length to cut.
 *
 * @param of the pipe or conduit that it becomes
 */
public record CutPiece(Id of, Length length) {

    public CutPiece {
        Require.present("cut piece", "of", of);
        Require.moreThan("cut piece of " + of, "length", length, Length.ZERO);
    }
}
