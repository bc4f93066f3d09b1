package leat.calc.wiring;

import java.util.Collection;
import java.util.List;
import leat.model.power.Load;
import leat.model.power.Outlet;
import leat.model.quantity.Current;
import leat.model.quantity.Power;
import leat.model.quantity.Voltage;

/** What loads draw together; what lasts for hours counts by more. */
final class LoadCurrents {

    private LoadCurrents() {}

    static Power total(Collection<? extends Load> loads) {
        return new Power(loads.stream().mapToDouble(load -> load.power().si()).sum());
    }

    /** All but what is plugged in for a while is taken to last for hours. */
    private static boolean lasts(Load load) {
        return !(load instanceof Outlet);
    }

    static List<? extends Load> lasting(Collection<? extends Load> loads) {
        return loads.stream().filter(LoadCurrents::lasts).toList();
    }

    /** What does not last for hours. */
    static List<? extends Load> passing(Collection<? extends Load> loads) {
        return loads.stream().filter(load -> !lasts(load)).toList();
    }

    /** What the breaker is chosen and held for. */
    static Current reckoned(ElectricalCode code, Collection<? extends Load> loads, Voltage voltage, int liveWires) {
        double lastingA = code.loadCurrent(total(lasting(loads)), voltage, liveWires)
                .value()
                .si();
        double otherA = code.loadCurrent(total(passing(loads)), voltage, liveWires)
                .value()
                .si();
        return new Current(lastingA * code.continuousFactor().limit().si() + otherA);
    }
}
