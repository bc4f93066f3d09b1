package leat.model.power;

/** The family of electrical codes that a yard is planned by. The code in force locally decides, whatever is shown here. */
public enum CodeFamily {
    /** NFPA 70 and what follows it: AWG, feet, 120 V. */
    NFPA_70,
    /** IEC 60364 and what follows it: square millimetres, metres, 230 V. */
    IEC_60364
}
