package leat.calc.wiring;

import java.util.OptionalInt;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.power.WiringMethod;

/**
 * How conductors lie, as far as their ampacity depends on it.
 *
 * @param loadedConductors that carry current, all together in the same conduit or cable; at least 1. Grounding conductors
 *                         do not count, nor a neutral that carries only what two poles differ by
 * @param ambientCelsius   temperature around them, whole °C; empty for that of the tables
 * @param terminalCelsius  what the terminals bear that they are joined to, 60 or 75 °C; 60 unless they are marked
 */
public record Laying(WiringMethod method, int loadedConductors, OptionalInt ambientCelsius, int terminalCelsius) {

    public Laying {
        Require.present("laying", "method", method);
        Require.atLeast("laying", "loadedConductors", loadedConductors, 1);
        Require.present("laying", "ambientCelsius", ambientCelsius);
        if (terminalCelsius != 60 && terminalCelsius != 75) {
            throw new InvalidValueException("laying", "terminalCelsius", String.valueOf(terminalCelsius), "60 or 75");
        }
    }

    /** Under the conditions of the tables, at terminals without a mark. */
    public static Laying usual(WiringMethod method, int loadedConductors) {
        return new Laying(method, loadedConductors, OptionalInt.empty(), 60);
    }

    public Laying withAmbient(int celsius) {
        return new Laying(method, loadedConductors, OptionalInt.of(celsius), terminalCelsius);
    }

    public Laying withTerminals(int celsius) {
        return new Laying(method, loadedConductors, ambientCelsius, celsius);
    }
}
