package leat.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Month;
import java.util.Optional;
import leat.model.fault.LeatException;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.Velocity;
import leat.model.water.Climate;
import leat.model.water.ClimateMonth;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Tables of climate, whole and broken; each complaint names file, line and month. */
@Tag("law")
class ClimateTableTest {

    private static final String HEAD = "latitude (deg),altitude (m),month,low (C),high (C),rain (mm)\n";

    private static String rows(String... instead) {
        StringBuilder text = new StringBuilder(HEAD);
        for (int month = 1; month <= 12; month++) {
            String row = "38.5,10," + month + ",5,20,30";
            for (String one : instead) {
                row = one.startsWith(month + ":") ? one.substring(one.indexOf(':') + 1) : row;
            }
            text.append(row).append('\n');
        }
        return text.toString();
    }

    private static void refused(String message, String text) {
        assertEquals(
                message,
                assertThrows(LeatException.class, () -> ClimateTable.read(text, "c.csv"))
                        .getMessage());
    }

    @Test
    void unitsMayBeThoseOfTheUnitedStates() {
        String head =
                "# of the shed\naltitude (ft),latitude (deg),month,low (°F),high (F),wind (mph),rain (in),humidity (%),dew point (F)\n";
        StringBuilder text = new StringBuilder(head);
        for (Month month : Month.values()) {
            text.append("100,38.5,").append(month.name(), 0, 3).append(",32,68,10,2,50,\n");
        }
        Climate climate = ClimateTable.read(text.toString(), "c.csv");
        ClimateMonth july = climate.month(Month.JULY);
        assertEquals(Length.feet(100), climate.altitude());
        assertEquals(0, july.lowC());
        assertEquals(20, july.highC(), 1e-12);
        assertEquals(Optional.of(Velocity.metresPerSecond(4.4704)), july.wind());
        assertEquals(Optional.of(Length.inches(2)), july.rain());
        assertEquals(Optional.of(Ratio.percent(50)), july.humidity());
        assertEquals(Optional.empty(), july.dewC());
    }

    @Test
    void gapsAreNamed() {
        String text = rows().replace("38.5,10,4,5,20,30\n", "").replace("38.5,10,11,5,20,30\n", "");
        refused(
                "c.csv: the year has gaps; there must be a line for each month, and none is there for April, November",
                text);
        refused("c.csv:7: high of June is missing; it must be given", rows("6:38.5,10,6,5,,30"));
    }

    @Test
    void aMonthThatStandsThereTwiceIsNamed() {
        refused(
                "c.csv:9: July stands in line 8 already; each month must have one line",
                rows("8:38.5,10,July,5,20,30"));
    }

    @Test
    void figuresThatCannotBeAreNamed() {
        refused(
                "c.csv:3: high of February is 'warm'; it must be a number, or empty when it is not known",
                rows("2:38.5,10,2,5,warm,30"));
        refused(
                "c.csv:3: climate of February: highC is 4.0; it must be at least the low, 5.0, and at most 60 °C",
                rows("2:38.5,10,2,5,4,30"));
        refused(
                "c.csv:3: month is '13'; it must be 1 to 12, or a name such as January or Jan",
                rows("2:38.5,10,13,5,20,30"));
        refused(
                "c.csv:2: climate of c.csv: latitude is 98.5 deg; it must be -90 deg to 90 deg",
                rows("1:98.5,10,1,5,20,30"));
    }

    @Test
    void columnsAreNamed() {
        refused("c.csv:1: there is no column latitude (deg)", "month,low (C),high (C)\n");
        refused(
                "c.csv:1: the column low has the unit 'K'; write low (C) or low (F)",
                rows().replace("low (C)", "low (K)"));
        refused(
                "c.csv:1: the column rain has no unit; write rain (mm) or rain (in)",
                rows().replace("rain (mm)", "rain"));
        refused(
                "c.csv:1: 'rains' is no column of a climate; it must be one of latitude, altitude, month, low, high, dew"
                        + " point, humidity, wind, sunshine, sunshine share, solar, rain; perhaps 'rain'",
                rows().replace("rain (mm)", "rains (mm)"));
        refused("c.csv is empty; its first line must name the columns", "");
    }
}
