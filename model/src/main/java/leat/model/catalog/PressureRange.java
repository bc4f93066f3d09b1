package leat.model.catalog;

import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.quantity.Pressure;

/** The pressures a head works at: {@code least <= reference <= most}, all more than 0. */
public record PressureRange(Pressure least, Pressure reference, Pressure most) {

    public PressureRange {
        Require.moreThan("pressure range", "least", least, Pressure.ZERO);
        Require.atLeast("pressure range", "reference", reference, least);
        Require.present("pressure range", "most", most);
        if (most.compareTo(reference) < 0) {
            throw new InvalidValueException(
                    "pressure range", "most", most.toString(), "at least the reference " + reference);
        }
    }
}
