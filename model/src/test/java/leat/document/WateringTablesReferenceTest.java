package leat.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Month;
import leat.model.catalog.HeadShape;
import leat.model.catalog.IntakeRate;
import leat.model.catalog.PlantKind;
import leat.model.catalog.SoilTexture;
import leat.model.catalog.WateringTables;
import leat.model.finding.Standing;
import leat.model.quantity.Length;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Ratio;
import leat.model.water.GrowingPlace;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tables of watering against what is printed, and whole in themselves. */
@Tag("reference")
class WateringTablesReferenceTest {

    private final WateringTables tables = StandingData.load("leat-1").catalog().watering();

    /** Source: FAO 56, tables 12 and 22, read: initial, middle, end coefficient; least root depth; depletion fraction. */
    @ParameterizedTest
    @CsvSource({"turf-cool, 0.90, 0.95, 0.95, 0.5, 0.40", "turf-warm, 0.80, 0.85, 0.85, 0.5, 0.50"})
    void turf(String key, double initial, double middle, double end, double rootM, double depletion) {
        PlantKind turf = tables.plant(key);
        assertEquals(Ratio.of(initial), turf.initial().orElseThrow());
        assertEquals(Ratio.of(middle), turf.middle());
        assertEquals(Ratio.of(end), turf.end().orElseThrow());
        assertEquals(Length.metres(rootM), turf.root());
        assertEquals(Ratio.of(depletion), turf.depletion());
        assertEquals(Standing.PUBLISHED, turf.citation().standing());
    }

    /** Source: FAO 56, table 19, read: ranges of field capacity and wilting point; the catalogue has their middles' difference. */
    @ParameterizedTest
    @CsvSource({
        "sand, 0.07, 0.17, 0.02, 0.07",
        "loamy sand, 0.11, 0.19, 0.03, 0.10",
        "sandy loam, 0.18, 0.28, 0.06, 0.16",
        "loam, 0.20, 0.30, 0.07, 0.17",
        "silt loam, 0.22, 0.36, 0.09, 0.21",
        "silt, 0.28, 0.36, 0.12, 0.22",
        "silty clay loam, 0.30, 0.37, 0.17, 0.24",
        "silty clay, 0.30, 0.42, 0.17, 0.29",
        "clay, 0.32, 0.40, 0.20, 0.24"
    })
    void availableWater(String texture, double leastFull, double mostFull, double leastDry, double mostDry) {
        SoilTexture soil = StandingData.load("leat-1").catalog().soil(texture);
        assertEquals(
                (leastFull + mostFull) / 2 - (leastDry + mostDry) / 2,
                soil.availableWater().value(),
                1e-9);
    }

    /** Source: FAO irrigation water management training manual, basic infiltration, mm/h; from memory. */
    @ParameterizedTest
    @CsvSource({"sand, 30, 1000", "sandy loam, 20, 30", "loam, 10, 20", "clay, 1, 5"})
    void basicIntake(String texture, double least, double most) {
        double intake =
                StandingData.load("leat-1").catalog().soil(texture).intake().inMillimetresPerHour();
        assertTrue(intake >= least && intake <= most, texture + " " + intake);
    }

    @Test
    void everySoilHasAnIntakeThatFallsWithTheSlopeAndWithoutCover() {
        for (String soil : StandingData.load("leat-1").catalog().soils().keySet()) {
            PrecipitationRate before = PrecipitationRate.millimetresPerHour(1_000);
            for (double slope : new double[] {0, 0.05, 0.08, 0.12, 0.5}) {
                IntakeRate covered = tables.intake(soil, Ratio.of(slope), true).orElseThrow();
                IntakeRate bare = tables.intake(soil, Ratio.of(slope), false).orElseThrow();
                assertTrue(bare.most().compareTo(covered.most()) <= 0, soil);
                assertTrue(covered.most().compareTo(before) <= 0, soil);
                before = covered.most();
            }
        }
    }

    @Test
    void tablesAreWhole() {
        tables.plantWords().values().forEach(tables::plant);
        for (GrowingPlace.Grade grade : GrowingPlace.Grade.values()) {
            tables.density(grade);
            tables.microclimate(grade);
        }
        for (HeadShape shape : HeadShape.values()) {
            tables.evenness(shape);
        }
        assertEquals(12, tables.plant("turf-cool-uc").monthly().size());
    }

    /** Shipped stations are US public data, and all of them are in the northern hemisphere with July as a summer month. */
    @Test
    void stationsAreOfUsPublicData() {
        assertEquals(5, tables.stations().size());
        tables.stations().values().forEach(station -> {
            assertTrue(station.citation().text().contains("public domain"), station.key());
            assertTrue(station.climate().month(Month.JULY).meanC()
                    > station.climate().month(Month.JANUARY).meanC());
        });
    }
}
