package leat.calc.wiring;

import java.util.Optional;
import leat.model.finding.Rule;
import leat.model.finding.Subject;
import leat.model.power.Circuit;
import leat.model.power.LampSupply;
import leat.model.power.Load;
import leat.model.power.Luminaire;
import leat.model.quantity.Quantity;

/** Holds a circuit of low voltage and its lamps against the rules. */
final class LampReview {

    private final ElectricalCode code;
    private final CircuitReview review;
    private final Looks looks;

    LampReview(ElectricalCode code, CircuitReview review, Looks looks) {
        this.code = code;
        this.review = review;
        this.looks = looks;
    }

    void look() {
        Circuit circuit = review.circuit();
        looks.hold(
                code.lampVoltageLimit(),
                Subject.of(circuit.id(), "voltage"),
                circuit.voltage(),
                "take a transformer for a lower voltage");
        looks.hold(
                code.lampCurrentLimit(),
                Subject.of(circuit.id(), "breaker"),
                circuit.breaker(),
                "protect each circuit of the transformer by itself, and share the lamps among more circuits");
        review.tree().loads().forEach(this::look);
    }

    /** Too little is looked for with all on; too much, at lamps of now, with nothing of later on. */
    private void look(Load load) {
        Optional<LampSupply> lamp = load instanceof Luminaire light ? light.lamp() : Optional.empty();
        Rule least = looks.rule("power.lamp.least");
        Quantity leastV = lamp.<Quantity>map(LampSupply::least).orElse(least.limit());
        review.voltage(load)
                .ifPresent(voltage -> looks.hold(
                        least,
                        Subject.of(load.id(), "voltage"),
                        voltage,
                        leastV,
                        "take thicker cable, a higher tap, a shorter way, or put fewer lamps on it"));
        Rule most = looks.rule("power.lamp.most");
        Quantity mostV = lamp.<Quantity>map(LampSupply::most).orElse(most.limit());
        review.voltageNow(load)
                .ifPresent(voltage -> looks.hold(
                        most, Subject.of(load.id(), "voltage"), voltage, mostV, "take a lower tap of the transformer"));
    }
}
