package leat.calc.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.catalog.MaterialKind;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Ledger;
import leat.model.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Source: counted by hand on the drawing of {@link TwoZones}. */
@Tag("reference")
class TwoZonesTest {

    private final TakeoffResult takeoff = TwoZones.takeoff(TwoZones.drawn());

    @Test
    void fittingsAreThoseOfTheDrawing() {
        assertEquals(
                new TreeMap<>(Map.ofEntries(
                        Map.entry("tee 1 in PVC", 2.0), // the tap, and between the two valves
                        Map.entry("elbow 90 1 in PVC", 3.0), // at (20, 0), up to the valves, the last valve
                        Map.entry("thread adapter 1 in PVC", 4.0), // street, tap, two inlets of valves
                        Map.entry("thread adapter 3/4 in x 1 in PVC", 2.0), // two outlets of valves
                        Map.entry("cross 3/4 in PVC", 1.0), // at (20, 20)
                        Map.entry("tee 3/4 in PVC", 1.0), // at (50, 15)
                        Map.entry("bushing 3/4 in x 1/2 in PVC", 1.0), // there too
                        Map.entry("outlet tee 3/4 in PVC", 1.0), // H4
                        Map.entry("outlet elbow 3/4 in PVC", 4.0), // H1, H2, H3, H5
                        Map.entry("outlet elbow 1/2 in PVC", 1.0), // H6
                        Map.entry("elbow 90 3/4 in PVC", 1.0), // at (50, 10)
                        Map.entry("coupling 3/4 in PVC", 1.0), // 30 ft are more than one stick
                        Map.entry("swing joint", 6.0))),
                counts(MaterialKind.FITTING));
    }

    @Test
    void goodsAreThoseOfTheDrawing() {
        assertEquals(Map.of("head spray-3_7", 6.0), counts(MaterialKind.HEAD));
        assertEquals(Map.of("zone valve 1 in", 2.0), counts(MaterialKind.VALVE));
        assertEquals(Map.of("valve box round 10 in", 1.0), counts(MaterialKind.BOX));
        assertEquals(1.0, counts(MaterialKind.BIB).get("hose bib"));
    }

    /** Depths: 18 in and 10 in of cover with 50 mm below; valves 200 mm deep and 150 mm apart, the tap 600 mm high. */
    @Test
    void pipesHaveTheLengthsOfTheDrawingWithTheirRisers() {
        double mainM = Length.inches(18).metres() + 0.05;
        double lateralM = Length.inches(10).metres() + 0.05;
        SortedMap<String, Double> pipes = counts(MaterialKind.PIPE);
        assertEquals(
                Length.feet(30).metres() + (mainM + 0.6) + (mainM - 0.2) + 0.15,
                pipes.get("pipe 1 in PVC Schedule 40"),
                1e-9);
        assertEquals(
                Length.feet(65 + 60).metres() + 2 * (lateralM - 0.2), pipes.get("pipe 3/4 in PVC Schedule 40"), 1e-9);
        assertEquals(Length.feet(10).metres(), pipes.get("pipe 1/2 in PVC Schedule 40"), 1e-9);
    }

    @Test
    void askingWhyNamesEachPlace() {
        Ledger ledger = takeoff.why("elbow 90 1 in");
        assertEquals(4, ledger.steps().size());
        assertEquals(3, ledger.value().si());
        assertTrue(
                ledger.steps().stream().anyMatch(step -> step.text().equals("elbow 90 1 in PVC, bend in pipe main")),
                ledger::toString);
        assertEquals(
                9,
                takeoff.why("tee").value().si()
                        + takeoff.why("swing joint").value().si());
        var refused = assertThrows(InvalidValueException.class, () -> takeoff.why("tea 1 in PVC"));
        assertTrue(refused.getMessage().contains("tee 1 in PVC"), refused.getMessage());
    }

    private SortedMap<String, Double> counts(MaterialKind kind) {
        SortedMap<String, Double> counts = new TreeMap<>();
        takeoff.lines().stream()
                .filter(line -> line.kind() == kind)
                .forEach(line -> counts.put(line.key(), line.quantity().si()));
        return counts;
    }
}
