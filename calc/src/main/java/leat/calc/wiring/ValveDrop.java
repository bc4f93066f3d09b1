package leat.calc.wiring;

import leat.model.catalog.ConductorSpec;
import leat.model.catalog.ValveSupply;
import leat.model.power.ValveCable;
import leat.model.quantity.Voltage;

/** Voltage lost in valve wires while one valve opens; zones run one at a time, so the common wire carries no more. */
final class ValveDrop {

    private ValveDrop() {}

    static Answer<Voltage> of(ElectricalCode code, ValveSupply supply, ValveCable cable, ConductorSpec conductor) {
        return code.controlDrop(
                supply.inrush(),
                conductor,
                supply.inrush(),
                conductor,
                cable.route().length());
    }
}
