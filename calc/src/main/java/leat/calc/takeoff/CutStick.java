package leat.calc.takeoff;

import java.util.List;
import leat.model.fault.Require;
import leat.model.quantity.Length;

/**
 * A stick or coil and what is cut from it.
 *
 * @param pieces longest first
 * @param left   what is left over
 */
public record CutStick(List<CutPiece> pieces, Length left) {

    public CutStick {
        pieces = Require.entries("stick", "pieces", pieces);
        Require.present("stick", "left", left);
    }
}
