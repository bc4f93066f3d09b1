package leat.model.catalog;

import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.finding.Standing;
import leat.model.quantity.Current;
import leat.model.quantity.Voltage;

/**
 * What the coil of a zone valve takes.
 *
 * @param voltage at the controller
 * @param inrush  current while it opens
 * @param holding current while it is open
 * @param least   voltage with which it still opens
 */
public record ValveSupply(Voltage voltage, Current inrush, Current holding, Voltage least, Citation citation) {

    /** For 24 V; common practice, no source. */
    public static final ValveSupply COMMON = new ValveSupply(
            new Voltage(24),
            new Current(0.4),
            new Current(0.2),
            new Voltage(20),
            new Citation("coils for 24 V", Standing.COMMON_PRACTICE));

    public ValveSupply {
        Require.moreThan("valve supply", "least", least, Voltage.ZERO);
        Require.moreThan("valve supply", "voltage", voltage, least);
        Require.moreThan("valve supply", "holding", holding, Current.ZERO);
        Require.atLeast("valve supply", "inrush", inrush, holding);
        Require.present("valve supply", "citation", citation);
    }
}
