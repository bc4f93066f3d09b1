package leat.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads published and recomputed check values; each record in the file names its source and its standing. */
public final class Checks {

    private Checks() {}

    /** One record of a file of check values. */
    public record Check(String id, JsonNode json) {

        public double input(String field) {
            return json.required("inputs").required(field).asDouble();
        }

        public JsonNode inputs() {
            return json.required("inputs");
        }

        public double expected(String field) {
            return json.required("expected").required(field).asDouble();
        }

        /** Holds the figure against the record, within the tolerance that the record states for its print. */
        public void expect(String field, double actual) {
            double expected = expected(field);
            double relative = json.required("tolerance").path("rel").asDouble(0.0) * Math.abs(expected);
            double absolute = json.required("tolerance").path("abs").asDouble(0.0);
            String source = json.required("source").asString() + " ("
                    + json.required("standing").asString() + ")";
            assertEquals(expected, actual, Math.max(relative, absolute), id + ", " + field + "; source: " + source);
        }

        @Override
        public String toString() {
            return id;
        }
    }

    /** The records of {@code checks/FILE.json}. */
    public static List<Check> of(String file) {
        String path = "/checks/" + file + ".json";
        try (InputStream in = Objects.requireNonNull(Checks.class.getResourceAsStream(path), path)) {
            List<Check> checks = new ArrayList<>();
            for (JsonNode json : JsonMapper.shared().readTree(in)) {
                checks.add(new Check(json.required("id").asString(), json));
            }
            return checks;
        } catch (IOException e) {
            throw new IllegalStateException(path, e);
        }
    }

    public static Stream<Check> of(String file, String prefix) {
        return of(file).stream().filter(check -> check.id().startsWith(prefix));
    }

    public static Check one(String file, String id) {
        return of(file).stream()
                .filter(check -> check.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
