package leat.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import leat.model.catalog.Catalog;
import leat.model.catalog.HeadFamily;
import leat.model.catalog.HeadShape;
import leat.model.catalog.PipeSeries;
import leat.model.catalog.PipeSpec;
import leat.model.catalog.Profile;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Citation;
import leat.model.finding.Rule;
import leat.model.geometry.Arc;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.plan.Yard;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Pressure;
import leat.model.quantity.UnitSystem;
import leat.model.water.Spray;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("law")
class StandingDataTest {

    private static final StandingData DATA = StandingData.load("leat-1");
    private static final Catalog CATALOG = DATA.catalog();

    @Test
    void anUnknownEditionIsRefusedWithTheEditionsThereAre() {
        var refused = assertThrows(InvalidValueException.class, () -> StandingData.load("leat-2"));
        assertEquals(
                "standing tables: edition is 'leat-2'; it must be one that this version has: leat-1; perhaps 'leat-1'",
                refused.getMessage());
    }

    @Test
    void theEditionOfNewYardsIsThere() {
        assertTrue(StandingData.EDITIONS.contains(Yard.EDITION));
        Yard yard = Yard.empty("plot", UnitSystem.US);
        assertEquals(
                CATALOG.heads().keySet(), DATA.siteOf(yard).catalog().heads().keySet());
    }

    @Test
    void readingTwiceGivesTheSame() {
        assertEquals(DATA, StandingData.load("leat-1"));
    }

    @Test
    void everyRowOfTheTablesIsThereSaveStripNozzlesAndFittingsThatAreFormulas() {
        assertEquals(rows("heads") - 2, CATALOG.heads().size());
        assertEquals(
                rows("pipe"),
                CATALOG.pipes().values().stream()
                        .mapToInt(series -> series.sizes().size())
                        .sum());
        assertEquals(rows("devices"), CATALOG.devices().size());
        assertEquals(rows("fittings") - 9, CATALOG.fittings().size());
        assertEquals(rows("soil"), CATALOG.soils().size());
        assertEquals(rows("rules"), DATA.rules().byId().size());
    }

    private static int rows(String table) {
        return Table.read("leat-1", table).size();
    }

    @Test
    void everyRowHasASource() {
        List<Citation> citations = new ArrayList<>();
        CATALOG.heads().values().forEach(one -> citations.add(one.citation()));
        CATALOG.pipes().values().forEach(one -> one.sizes().forEach(size -> citations.add(size.citation())));
        CATALOG.devices().values().forEach(one -> citations.add(one.citation()));
        CATALOG.fittings().values().forEach(one -> citations.add(one.citation()));
        CATALOG.soils().values().forEach(one -> citations.add(one.citation()));
        DATA.rules().byId().values().stream().map(Rule::citation).forEach(citations::add);
        citations.forEach(one -> assertFalse(one.text().isBlank()));
    }

    @Test
    void seriesHaveTheNamesOfTheTrade() {
        assertTrue(CATALOG.pipes()
                .keySet()
                .containsAll(List.of(
                        "PVC Schedule 40",
                        "PVC Schedule 80",
                        "PVC SDR 21 (Class 200)",
                        "PVC SDR 26 (Class 160)",
                        "copper Type L",
                        "copper Type M",
                        "PEX SDR 9 CTS",
                        "PE SDR 9 CTS",
                        "PE SIDR 15",
                        "PE100 SDR 11 (PN 16)",
                        "PE100 SDR 17 (PN 10)",
                        "PVC-U PN 10 (SDR 21)",
                        "PVC-U PN 16 (SDR 13.6)")));
    }

    @Test
    void aLargerSizeHasALargerBoreAndFitsIntoItsOutside() {
        for (PipeSeries series : CATALOG.pipes().values()) {
            PipeSpec smaller = series.sizes().get(0);
            for (PipeSpec spec : series.sizes().subList(1, series.sizes().size())) {
                assertTrue(
                        spec.bore().compareTo(smaller.bore()) > 0, spec.size().toString());
                assertTrue(
                        spec.outside().compareTo(smaller.outside()) > 0,
                        spec.size().toString());
                smaller = spec;
            }
            var names = new TreeSet<String>();
            series.sizes().forEach(spec -> assertTrue(names.add(spec.size().size())));
        }
    }

    @Test
    void theMeanDepthOfAProfileIsOne() {
        for (Profile profile : CATALOG.profiles().values()) {
            int pieces = profile.relativeDepth().size() - 1;
            double mean = 0;
            for (int i = 0; i < pieces; i++) { // depth linear along each piece, weighted by the circle it turns into
                double from = (double) i / pieces;
                double width = 1.0 / pieces;
                double near = profile.relativeDepth().get(i);
                double far = profile.relativeDepth().get(i + 1);
                mean += 2 * width * (near * (from / 2 + width / 6) + far * (from / 2 + width / 3));
            }
            assertEquals(
                    1, mean, 0.002, profile.key()); // depths are printed to 4 digits, the table's own sum is coarse
        }
    }

    @Test
    void everyHeadHasAProfileThatIsThere() {
        CATALOG.heads().values().forEach(head -> CATALOG.profile(head.jet().profile()));
    }

    @Test
    void spraysGiveTheSameDepthWhateverTheirRadius() {
        for (HeadFamily family : CATALOG.heads().values()) {
            if (family.key().startsWith("spray-")) {
                double radiusM = family.jet().radius().metres();
                double rate = family.jet().flow().si() / (radiusM * radiusM);
                double wanted = PrecipitationRate.millimetresPerHour(40).si(); // the table's own statement
                assertEquals(wanted, rate, 1e-5 * wanted, family.key());
            }
        }
    }

    @Test
    void headsOfAllShapesAreThereAndOnlyThoseThatThrowCanBeTurnedDown() {
        var shapes = new TreeSet<HeadShape>();
        CATALOG.heads().values().forEach(family -> {
            shapes.add(family.shape());
            boolean throwsWater = family.shape() == HeadShape.SPRAY || family.shape() == HeadShape.ROTOR;
            assertEquals(
                    family.jet().radius().metres() * (throwsWater ? 0.75 : 1),
                    family.jet().leastRadius().metres());
        });
        assertEquals(new TreeSet<>(List.of(HeadShape.values())), shapes);
        assertEquals(HeadShape.BUBBLER, CATALOG.head("dripper-2_0").shape());
        assertEquals(HeadShape.ROTOR, CATALOG.head("multi-6_1").shape());
        assertFalse(CATALOG.heads().containsKey("spray-strip-end"));
    }

    @Test
    void aQuarterOfASprayTakesAQuarterOfItsFlow() {
        HeadFamily family = CATALOG.head("spray-3_7");
        var spray = new Spray(
                new HeadId("S1"),
                family.key(),
                new Point(0, 0),
                Arc.degrees(0, 90),
                family.jet().radius());
        assertEquals(family.jet().flow().si() / 4, family.referenceFlow(spray).si(), 1e-15);
    }

    @Test
    void aDeviceLosesWhatItsRowPrintsAtItsGreatestFlow() {
        for (Table.Row row : Table.read("leat-1", "devices")) {
            var device = CATALOG.device(row.text("device_id"));
            double lossKPa = device.loss().lossAt(device.most()).si() / 1_000;
            // the coefficient is printed to three decimals, the flow to three digits
            assertEquals(row.number("loss_at_max_kpa"), lossKPa, 0.15, device.key());
        }
    }

    @Test
    void soilsAreNamedAsSurfacesNameThem() {
        assertEquals(0.14, CATALOG.soil("silt loam").availableWater().value(), 1e-12);
        assertEquals(
                PrecipitationRate.millimetresPerHour(10),
                CATALOG.soil("silt loam").intake());
    }

    @Test
    void limitsKeepTheirUnit() {
        assertEquals(Pressure.psi(80), DATA.rules().get("source.pressure").limit());
        assertEquals(Length.inches(12), DATA.rules().get("water.backflow.pvb").limit());
    }

    @Test
    void flowsOfMetersAreTheFiguresOfTheirTable() {
        assertEquals(Flow.gpm(20), CATALOG.device("meter-5_8").most());
        assertEquals(Flow.gpm(10), CATALOG.device("meter-5_8").continuous().orElseThrow());
    }
}
