package leat.calc.schedule.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A published or recomputed figure of resources/checks/watering.json, with its source and standing. */
public record WateringCheck(JsonNode json) {

    public static List<WateringCheck> all() throws IOException {
        try (InputStream in = WateringCheck.class.getResourceAsStream("/checks/watering.json")) {
            JsonNode array = JsonMapper.builder().build().readTree(in);
            return StreamSupport.stream(array.spliterator(), false)
                    .map(WateringCheck::new)
                    .toList();
        }
    }

    public String text(String field) {
        return json.get(field).stringValue();
    }

    public JsonNode inputs() {
        return json.get("inputs");
    }

    public JsonNode expected() {
        return json.get("expected");
    }

    public double input(String name) {
        return inputs().get(name).doubleValue();
    }

    /** Compares a figure with the printed one, to the precision of the print. */
    public void expect(String name, double actual) {
        JsonNode tolerance = json.get("tolerance");
        double expected = expected().get(name).doubleValue();
        double relative = tolerance.has("rel") ? tolerance.get("rel").doubleValue() : 0;
        double absolute = tolerance.has("abs") ? tolerance.get("abs").doubleValue() : 0;
        assertEquals(expected, actual, Math.max(absolute, relative * Math.abs(expected)), name + " of " + this);
    }

    /** For examples of which some print more steps than others. */
    public void expectIfThere(String name, double actual) {
        if (expected().has(name)) {
            expect(name, actual);
        }
    }

    @Override
    public String toString() {
        return text("id") + ": " + text("source") + " (" + text("standing") + ")";
    }
}
