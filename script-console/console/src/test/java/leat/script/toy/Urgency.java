package leat.script.toy;

/** A closed list of constants. */
public enum Urgency {
    NOTE,
    CAUTION,
    BREACH,
    HIGH_RISK
}
