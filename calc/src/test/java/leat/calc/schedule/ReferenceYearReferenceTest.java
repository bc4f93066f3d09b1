package leat.calc.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.Velocity;
import leat.model.water.Climate;
import leat.model.water.ClimateMonth;
import leat.model.water.Sunshine;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The reference use of three places, month by month, against what FAO publishes for them. Source: FAO AQUASTAT grid cells
 * and a FAO CLIMWAT station, as carried in an open package (checks/climate_fao.csv). They were computed by others from daily
 * or rounded data and partly without soil heat, so months may differ by an eighth or 0.35 mm, and years by a twentieth.
 */
@Tag("reference")
class ReferenceYearReferenceTest {

    /** A month of a place with the printed figure. */
    record Printed(String place, Month month, double printedMm, double computedMm) {}

    static List<Printed> months() throws IOException {
        SortedMap<String, List<NamedCsvRecord>> stations = new TreeMap<>();
        try (InputStream in = Printed.class.getResourceAsStream("/checks/climate_fao.csv")) {
            CsvReader.builder()
                    .ofNamedCsvRecord(in, StandardCharsets.UTF_8)
                    .forEach(row -> stations.computeIfAbsent(row.getField("station_id"), key -> new ArrayList<>())
                            .add(row));
        }
        List<Printed> printed = new ArrayList<>();
        stations.forEach((place, rows) -> {
            List<ReferenceMonth> year = ReferenceYear.of(climate(place, rows));
            for (int i = 0; i < rows.size(); i++) {
                printed.add(new Printed(
                        place,
                        year.get(i).month(),
                        Double.parseDouble(rows.get(i).getField("eto_published_mm_d")),
                        year.get(i).aDay().inMillimetres()));
            }
        });
        return printed;
    }

    @ParameterizedTest
    @MethodSource("months")
    void aMonthIsNearThePrint(Printed month) {
        assertEquals(month.printedMm(), month.computedMm(), Math.max(0.35, 0.12 * month.printedMm()));
    }

    @Test
    void aYearIsNearThePrint() throws IOException {
        Stream.of("kuala-lumpur-grid", "central-india-grid", "srinagar").forEach(place -> {
            List<Printed> year =
                    all().stream().filter(month -> month.place().equals(place)).toList();
            assertEquals(12, year.size());
            double printed = year.stream().mapToDouble(Printed::printedMm).sum();
            double computed = year.stream().mapToDouble(Printed::computedMm).sum();
            assertEquals(printed, computed, 0.05 * printed, place);
        });
    }

    /** Source: FAO 56, example 20, both ways of doing without data; near Lyon in July, printed 4.56 and 5.0 mm. */
    @Test
    void temperaturesAlone() {
        Climate lyon = new Climate(
                "Lyon",
                Angle.degrees(45.72),
                Length.metres(200),
                Stream.of(Month.values())
                        .map(month -> ClimateMonth.of(month, 14.8, 26.6))
                        .toList());
        ReferenceMonth july = ReferenceYear.of(lyon).get(6);
        assertEquals(5.0, july.aDay().inMillimetres(), 0.06);
        assertEquals(EvapotranspirationMethod.HARGREAVES, july.method());
        assertEquals(List.of("humidity", "sunshine", "wind"), july.estimated());
        Climate windy = new Climate(
                "Lyon",
                lyon.latitude(),
                lyon.altitude(),
                Stream.of(Month.values())
                        .map(ReferenceYearReferenceTest::withWind)
                        .toList());
        ReferenceMonth again = ReferenceYear.of(windy).get(6);
        assertEquals(4.56, again.aDay().inMillimetres(), 0.03);
        assertEquals(EvapotranspirationMethod.PENMAN_MONTEITH, again.method());
    }

    private static ClimateMonth withWind(Month month) {
        return new ClimateMonth(
                month,
                14.8,
                26.6,
                Optional.empty(),
                Optional.empty(),
                Optional.of(Velocity.metresPerSecond(2)),
                Sunshine.UNKNOWN,
                Optional.empty());
    }

    private static List<Printed> all() {
        try {
            return months();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Climate climate(String place, List<NamedCsvRecord> rows) {
        return new Climate(
                place,
                Angle.degrees(Double.parseDouble(rows.get(0).getField("latitude_deg"))),
                Length.metres(Double.parseDouble(rows.get(0).getField("altitude_m"))),
                rows.stream().map(ReferenceYearReferenceTest::month).toList());
    }

    private static ClimateMonth month(NamedCsvRecord row) {
        return new ClimateMonth(
                Month.of(Integer.parseInt(row.getField("month"))),
                Double.parseDouble(row.getField("tmin_c")),
                Double.parseDouble(row.getField("tmax_c")),
                Optional.empty(),
                figure(row, "rh_mean_pct").map(Ratio::percent),
                figure(row, "wind_2m_m_s").map(Velocity::metresPerSecond),
                new Sunshine(
                        figure(row, "sunshine_h_d"),
                        figure(row, "sunshine_pct").map(Ratio::percent),
                        figure(row, "rs_mj_m2_d")),
                Optional.empty());
    }

    private static Optional<Double> figure(NamedCsvRecord row, String column) {
        String cell = row.getField(column);
        return cell.isEmpty() ? Optional.empty() : Optional.of(Double.parseDouble(cell));
    }
}
