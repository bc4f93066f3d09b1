package leat.model.catalog;

/** What a device in the line is for. */
public enum DeviceKind {
    METER,
    /** Pressure vacuum breaker, ASSE 1020. */
    PRESSURE_VACUUM_BREAKER,
    /** Reduced pressure principle assembly, ASSE 1013. */
    REDUCED_PRESSURE,
    /** Double check valve assembly, ASSE 1015. */
    DOUBLE_CHECK,
    /** Atmospheric vacuum breaker, ASSE 1001; not under constant pressure. */
    ATMOSPHERIC_VACUUM_BREAKER,
    HOSE_VACUUM_BREAKER,
    ZONE_VALVE,
    MASTER_VALVE,
    STRAINER,
    REGULATOR,
    CHECK_VALVE,
    FLOW_SENSOR;

    public boolean isBackflowPreventer() {
        return this == PRESSURE_VACUUM_BREAKER
                || this == REDUCED_PRESSURE
                || this == DOUBLE_CHECK
                || this == ATMOSPHERIC_VACUUM_BREAKER;
    }
}
