package leat.model.catalog;

/** What a device in the line is for. */
public enum DeviceKind {
    METER("meter"),
    /** Pressure vacuum breaker, ASSE 1020. */
    PRESSURE_VACUUM_BREAKER("pressure vacuum breaker"),
    /** Reduced pressure principle assembly, ASSE 1013. */
    REDUCED_PRESSURE("reduced pressure assembly"),
    /** Double check valve assembly, ASSE 1015. */
    DOUBLE_CHECK("double check assembly"),
    /** Atmospheric vacuum breaker, ASSE 1001; not under constant pressure. */
    ATMOSPHERIC_VACUUM_BREAKER("atmospheric vacuum breaker"),
    HOSE_VACUUM_BREAKER("hose vacuum breaker"),
    ZONE_VALVE("zone valve"),
    MASTER_VALVE("master valve"),
    STRAINER("strainer"),
    REGULATOR("regulator"),
    CHECK_VALVE("check valve"),
    FLOW_SENSOR("flow sensor");

    private final String label;

    DeviceKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** Whether it is built into the inlet of a pipe and keeps no water from flowing back that must not. */
    public boolean isFitted() {
        return this == STRAINER || this == CHECK_VALVE || this == MASTER_VALVE || this == FLOW_SENSOR;
    }

    public boolean isBackflowPreventer() {
        return this == PRESSURE_VACUUM_BREAKER
                || this == REDUCED_PRESSURE
                || this == DOUBLE_CHECK
                || this == ATMOSPHERIC_VACUUM_BREAKER;
    }
}
