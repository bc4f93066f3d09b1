package leat.calc.takeoff;

import leat.model.id.Id;
import leat.model.plan.Yard;
import leat.model.power.Circuit;
import leat.model.power.CodeFamily;
import leat.model.power.Load;
import leat.model.power.Panel;
import leat.model.power.PowerSystem;
import leat.model.site.Phase;

/** What the counts of the power system ask of it. */
final class PowerYard {

    private final Yard yard;
    private final PowerSystem power;

    PowerYard(Yard yard) {
        this.yard = yard;
        power = yard.power();
    }

    PowerSystem power() {
        return power;
    }

    CodeFamily code() {
        return yard.codeFamily();
    }

    /** A circuit across two live conductors has no neutral, unless it has three wires of NFPA 70. */
    boolean hasNeutral(Circuit circuit) {
        if (circuit.liveWires() == 3) {
            return code() == CodeFamily.NFPA_70;
        }
        return !(power.supplyOf(circuit) instanceof Panel panel)
                || circuit.voltage().si() <= panel.voltage().si() * 1.2;
    }

    /** Ways of a breaker: one for each live conductor that is no neutral. */
    int poles(Circuit circuit) {
        return circuit.liveWires() - (hasNeutral(circuit) ? 1 : 0);
    }

    /** When the thing at the end of a cable is there. */
    Phase phaseOf(Id end) {
        return power.loads()
                .filter(load -> load.id().equals(end))
                .map(Load::phase)
                .findFirst()
                .or(() -> power.switches().stream()
                        .filter(one -> one.id().equals(end))
                        .map(one -> one.phase())
                        .findFirst())
                .or(() -> power.panels().stream()
                        .filter(one -> one.id().equals(end))
                        .map(Panel::phase)
                        .findFirst())
                .orElse(Phase.NOW);
    }
}
