package leat.model.site;

import leat.model.fault.Require;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;

/**
 * One side of the lot as the deed or the surveyor gives it.
 *
 * @param bearing  clockwise from north
 * @param distance horizontal, more than 0
 */
public record Course(Angle bearing, Length distance) {

    public Course {
        Require.present("course", "bearing", bearing);
        Require.moreThan("course", "distance", distance, Length.ZERO);
        bearing = bearing.turned();
    }
}
