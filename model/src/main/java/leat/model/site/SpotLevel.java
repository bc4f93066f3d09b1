package leat.model.site;

import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.quantity.Length;

/** A measured or intended height of the ground above the yard's datum. */
public record SpotLevel(Point at, Length level) {

    public SpotLevel {
        Require.present("spot level", "at", at);
        Require.present("spot level", "level", level);
    }
}
