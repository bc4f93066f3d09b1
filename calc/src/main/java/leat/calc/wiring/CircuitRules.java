package leat.calc.wiring;

import leat.model.power.Panel;
import leat.model.quantity.Current;
import leat.model.quantity.Power;
import leat.model.quantity.Voltage;

/** What the stage asks of the code about whole circuits. */
final class CircuitRules {

    record Supply(Current breaker, Voltage voltage, int liveWires) {}

    Power mostShared(Panel panel) {
        return new Power(0.8 * 20 * panel.voltage().si());
    }

    Supply supply(Panel panel, Power total) {
        return new Supply(new Current(20), panel.voltage(), 2);
    }

    boolean asksGroundFault(Supply supply) {
        return true;
    }
}
