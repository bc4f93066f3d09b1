package leat.document;

import java.util.List;

/** A column of a table of climate: what it is called, and the units that its figures may have, the first one usual. */
enum ClimateColumn {
    LATITUDE("latitude", true, ClimateUnit.of("deg", 1)),
    ALTITUDE("altitude", true, ClimateUnit.of("m", 1), ClimateUnit.of("ft", 0.3048)),
    MONTH("month", true),
    LOW("low", true, ClimateUnit.of("C", 1), ClimateUnit.FAHRENHEIT),
    HIGH("high", true, ClimateUnit.of("C", 1), ClimateUnit.FAHRENHEIT),
    DEW_POINT("dew point", false, ClimateUnit.of("C", 1), ClimateUnit.FAHRENHEIT),
    HUMIDITY("humidity", false, ClimateUnit.of("%", 1)),
    /** At 2 m above the ground. */
    WIND("wind", false, ClimateUnit.of("m/s", 1), ClimateUnit.of("km/h", 1 / 3.6), ClimateUnit.of("mph", 0.44704)),
    SUNSHINE("sunshine", false, ClimateUnit.of("h", 1)),
    SUNSHINE_SHARE("sunshine share", false, ClimateUnit.of("%", 1)),
    SOLAR("solar", false, ClimateUnit.of("MJ/m2", 1), ClimateUnit.of("kWh/m2", 3.6)),
    /** Of the whole month. */
    RAIN("rain", false, ClimateUnit.of("mm", 0.001), ClimateUnit.of("in", 0.0254));

    private final String title;
    private final boolean needed;
    private final List<ClimateUnit> units;

    ClimateColumn(String title, boolean needed, ClimateUnit... units) {
        this.title = title;
        this.needed = needed;
        this.units = List.of(units);
    }

    String title() {
        return title;
    }

    boolean isNeeded() {
        return needed;
    }

    List<ClimateUnit> units() {
        return units;
    }
}
