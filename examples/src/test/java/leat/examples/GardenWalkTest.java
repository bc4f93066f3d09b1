package leat.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import leat.calc.wiring.LoadFigures;
import leat.calc.wiring.TransformerFigures;
import leat.calc.wiring.WiringResult;
import leat.model.finding.Severity;
import leat.model.id.CableId;
import leat.model.id.LuminaireId;
import leat.model.id.TransformerId;
import leat.model.power.PowerCable;
import leat.model.site.Phase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class GardenWalkTest {

    private static Example walk;

    @BeforeAll
    static void run() {
        walk = Example.run("garden-walk/garden-walk.js");
    }

    private static WiringResult wiring() {
        return walk.assessment().wiring();
    }

    @Test
    void eachLampGetsAVoltageThatItWorksWith() {
        List<LoadFigures> lamps = wiring().loads().stream()
                .filter(one -> one.id() instanceof LuminaireId)
                .toList();
        assertEquals(9, lamps.size());
        for (LoadFigures lamp : lamps) {
            double volts = lamp.voltage().orElseThrow().si();
            assertTrue(volts >= 10.8 && volts <= 15, lamp::toString);
        }
        assertTrue(walk.assessment().findings().stream().noneMatch(one -> one.severity() == Severity.BREACH));
    }

    @Tag("law")
    @Test
    void ledgersEndWithTheFigureToTheLastBit() {
        LoadFigures last = wiring().load(new LuminaireId("pond 2")).orElseThrow();
        assertEquals(
                last.voltage().orElseThrow(),
                walk.assessment().why("pond 2", "voltage").value());
        TransformerFigures garden =
                wiring().transformer(new TransformerId("garden")).orElseThrow();
        assertEquals(garden.loaded(), walk.assessment().why("garden", "load").value());
    }

    @Test
    void theReportWarnsOfLowVoltageToo() {
        String page = new String(walk.outcome().files().get("report.html"), StandardCharsets.UTF_8);
        assertTrue(page.contains("Low-voltage lights"));
        assertTrue(page.contains("Licensed electrician and permits"));
    }

    @Test
    void wiresToThePondAreLaidNow() {
        for (PowerCable cable : walk.yard().power().powerCables()) {
            assertEquals(Phase.NOW, cable.phase(), () -> cable.id().name());
        }
        assertTrue(walk.yard().power().cable(new CableId("pond 1 to pond 2")).isPresent());
    }

    /** Checked by hand against the drop of each cable. */
    @Tag("pinned")
    @Test
    void materialsNameTransformerCableAndConnectors() {
        List<String> keys = walk.assessment().takeoff().lines().stream()
                .map(one -> one.key())
                .toList();
        assertTrue(keys.contains("transformer 150 VA, 12 V, 13 V, 15 V"), keys::toString);
        assertTrue(keys.contains("low-voltage luminaire 5 W"), keys::toString);
        assertTrue(keys.contains("splice connector waterproof"), keys::toString);
        assertTrue(keys.stream().anyMatch(key -> key.startsWith("low-voltage cable ")), keys::toString);
    }
}
