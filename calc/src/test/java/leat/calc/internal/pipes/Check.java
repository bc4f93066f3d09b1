package leat.calc.internal.pipes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A published or recomputed figure of resources/checks (hydraulics.json unless another file is named), with its source and standing. */
public record Check(JsonNode json) {

    public static final double FOOT_M = 0.3048;
    public static final double INCH_M = 0.0254;
    public static final double GPM_M3_PER_S = 231 * INCH_M * INCH_M * INCH_M / 60;
    public static final double PSI_PA = 0.45359237 * 9.80665 / (INCH_M * INCH_M);

    public static List<Check> all() throws IOException {
        return all("hydraulics");
    }

    /** Those of another file of resources/checks. */
    public static List<Check> all(String file) throws IOException {
        try (InputStream in = Check.class.getResourceAsStream("/checks/" + file + ".json")) {
            JsonNode array = JsonMapper.builder().build().readTree(in);
            return StreamSupport.stream(array.spliterator(), false)
                    .map(Check::new)
                    .toList();
        }
    }

    public static Check named(String id) throws IOException {
        return all().stream()
                .filter(check -> check.text("id").equals(id))
                .findFirst()
                .orElseThrow();
    }

    public String text(String field) {
        return json.get(field).stringValue();
    }

    public double input(String name) {
        return json.get("inputs").get(name).doubleValue();
    }

    public JsonNode inputs() {
        return json.get("inputs");
    }

    /** Compares a figure with the printed one, to the precision of the print. */
    public void expect(String name, double actual) {
        expect(json.get("expected").get(name).doubleValue(), actual);
    }

    public void expect(double expected, double actual) {
        JsonNode tolerance = json.get("tolerance");
        double relative = tolerance.has("rel") ? tolerance.get("rel").doubleValue() : 0;
        double absolute = tolerance.has("abs") ? tolerance.get("abs").doubleValue() : 0;
        assertEquals(expected, actual, Math.max(absolute, relative * Math.abs(expected)), toString());
    }

    @Override
    public String toString() {
        return text("id") + ": " + text("source") + " (" + text("standing") + ")";
    }
}
