package leat.model.catalog;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.quantity.Current;
import leat.model.quantity.Resistance;

/**
 * What the tables give for a conductor whose insulation may become so warm.
 *
 * @param ampacity     current that it carries for ever under the conditions of the table
 * @param loopPerMetre voltage drop for each ampere and each metre of way, out and back, in a circuit of two wires
 */
public record InsulationColumn(
        int celsius, Optional<Current> ampacity, Optional<Resistance> loopPerMetre, Citation citation) {

    public InsulationColumn {
        Require.moreThan("insulation", "celsius", celsius, 0);
        Require.present("insulation", "ampacity", ampacity);
        Require.present("insulation", "loopPerMetre", loopPerMetre);
        Require.present("insulation", "citation", citation);
    }
}
