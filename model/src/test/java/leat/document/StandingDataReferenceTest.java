package leat.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import leat.model.catalog.Catalog;
import leat.model.catalog.PipeSpec;
import leat.model.finding.Standing;
import leat.model.quantity.Length;
import leat.model.water.TradeSize;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of the standing tables against figures from outside; the source stands at each test. */
@Tag("reference")
class StandingDataReferenceTest {

    private static final Catalog CATALOG = StandingData.load("leat-1").catalog();

    /** Source: ASTM D1785 tables 1 and 2, ASTM B88; figures from memory, confirmed by friction tables. */
    @ParameterizedTest
    @CsvSource({
        "PVC Schedule 40, 1/2 in, 0.622",
        "PVC Schedule 40, 3/4 in, 0.824",
        "PVC Schedule 40, 1 in, 1.049",
        "PVC Schedule 40, 1-1/4 in, 1.380",
        "PVC Schedule 40, 1-1/2 in, 1.610",
        "PVC Schedule 40, 2 in, 2.067",
        "PVC Schedule 40, 3 in, 3.068",
        "copper Type L, 1/2 in, 0.545",
        "copper Type L, 3/4 in, 0.785",
        "copper Type L, 1 in, 1.025",
        "copper Type L, 1-1/4 in, 1.265",
        "copper Type L, 2 in, 1.985"
    })
    void boresInInches(String series, String size, double boreIn) {
        assertEquals(Length.inches(boreIn), spec(series, size).bore());
    }

    /**
     * Source: friction loss table for 200 psi pressure-rated SDR 21 PVC pipe, C = 150, psi per 100 ft, as reprinted by a
     * pipe supplier; published. It is met with the average wall only. Printed to three figures.
     */
    @ParameterizedTest
    @CsvSource({
        "3/4 in, 5, 1.32",
        "3/4 in, 10, 4.77",
        "3/4 in, 18, 14.16",
        "1 in, 5, 0.391",
        "1 in, 10, 1.41",
        "1 in, 18, 4.19",
        "1-1/4 in, 10, 0.445",
        "1-1/4 in, 18, 1.32",
        "1-1/2 in, 10, 0.228",
        "2 in, 18, 0.226"
    })
    void frictionInSdr21(String size, double flowGpm, double lossPsi) {
        double loss = lossPsiPer100Ft(spec("PVC SDR 21 (Class 200)", size), flowGpm);
        assertEquals(lossPsi, loss, Math.max(0.0006, 0.012 * lossPsi));
    }

    /**
     * Source: university irrigation course, table of friction loss for PVC class 160 pipe, psi per 100 ft; published. It
     * prints its bores, which are those of the least wall.
     */
    @ParameterizedTest
    @CsvSource({
        "1 in, 5, 0.35",
        "1 in, 20, 4.59",
        "2 in, 40, 0.86",
        "2 in, 100, 4.72",
        "3 in, 100, 0.72",
        "4 in, 200, 0.76"
    })
    void frictionInClass160(String size, double flowGpm, double lossPsi) {
        double loss = lossPsiPer100Ft(spec("PVC SDR 26 (Class 160)", size), flowGpm);
        assertEquals(lossPsi, loss, Math.max(0.006, 0.02 * lossPsi));
    }

    /**
     * Source: EN 12201-2, agreeing with a public reproduction of ISO 4427-2:2007: outside diameter less twice the wall
     * of SDR 11.
     */
    @ParameterizedTest
    @CsvSource({"DN/OD 25, 20.4", "DN/OD 32, 26.0", "DN/OD 63, 51.4"})
    void boresOfPe100(String size, double boreMm) {
        assertEquals(
                Length.millimetres(boreMm), spec("PE100 SDR 11 (PN 16)", size).bore());
    }

    /** Source: Allen and others, FAO Irrigation and Drainage Paper 56, 1998, table 19: ranges of available water. */
    @ParameterizedTest
    @CsvSource({
        "sand, 0.05, 0.11",
        "loamy sand, 0.06, 0.12",
        "sandy loam, 0.11, 0.15",
        "loam, 0.13, 0.18",
        "silt loam, 0.13, 0.19",
        "silty clay loam, 0.13, 0.18",
        "silty clay, 0.13, 0.19",
        "clay, 0.12, 0.20"
    })
    void soilsHoldWaterWithinTheRangesOfFao56(String texture, double least, double most) {
        double held = CATALOG.soil(texture).availableWater().value();
        assertTrue(held >= least && held <= most, texture + " holds " + held);
    }

    /** Source: Crane TP-410 (1982) equivalent lengths of 30, 60, 340 diameters times the friction factor 0.022 of 1 in. */
    @Test
    void fittingsOfCrane() {
        assertEquals(30 * 0.022, CATALOG.fitting("elbow90").k().value(), 1e-9);
        assertEquals(60 * 0.022, CATALOG.fitting("tee-branch").k().value(), 1e-9);
        assertEquals(340 * 0.022, CATALOG.fitting("globe-valve").k().value(), 1e-9);
        assertEquals(Standing.PUBLISHED, CATALOG.fitting("elbow90").citation().standing());
    }

    private static PipeSpec spec(String series, String size) {
        return CATALOG.pipe(new TradeSize(series, size));
    }

    /** Hazen and Williams for plastic pipe as extension texts print it: 0.2083 (100/C)^1.852 q^1.852 / d^4.8655 ft. */
    private static double lossPsiPer100Ft(PipeSpec spec, double flowGpm) {
        double feet = 0.2083
                * Math.pow(100 / spec.hazenWilliamsC().value(), 1.852)
                * Math.pow(flowGpm, 1.852)
                / Math.pow(spec.bore().inInches(), 4.8655);
        return 0.433 * feet;
    }
}
