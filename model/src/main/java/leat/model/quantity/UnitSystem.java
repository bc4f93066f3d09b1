package leat.model.quantity;

/** The family of units that a yard is written and shown in. Computation is the same in both. */
public enum UnitSystem {
    /** Feet, inches, psi, US gallons a minute. */
    US,
    /** Metres, millimetres, kPa, litres a minute. */
    METRIC
}
