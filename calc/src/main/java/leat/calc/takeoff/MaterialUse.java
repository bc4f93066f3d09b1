package leat.calc.takeoff;

import leat.model.fault.Require;
import leat.model.finding.Subject;
import leat.model.quantity.Quantity;

/**
 * One place where a material goes.
 *
 * @param subject  the thing or the place
 * @param why      what it is for there, such as {@code pipes zone-1/2 and zone-1/3 meet}
 * @param quantity how much of the line it makes up
 */
public record MaterialUse(Subject subject, String why, Quantity quantity) {

    public MaterialUse {
        Require.present("material use", "subject", subject);
        Require.present("material use", "why", why);
        Require.present("material use", "quantity", quantity);
    }
}
