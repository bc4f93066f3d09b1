package leat.calc.internal.cells;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The check values of coverage: each record of checks/coverage.json names its source and standing. */
final class Checks {

    private Checks() {}

    /** The records whose identifier starts with one of these. */
    static List<JsonNode> startingWith(String... starts) {
        List<JsonNode> found = new ArrayList<>();
        for (JsonNode record : all()) {
            for (String start : starts) {
                if (record.get("id").asString().startsWith(start)) {
                    found.add(record);
                }
            }
        }
        return found;
    }

    static JsonNode named(String id) {
        for (JsonNode record : all()) {
            if (record.get("id").asString().equals(id)) {
                return record;
            }
        }
        throw new IllegalArgumentException("no check value " + id);
    }

    static double input(JsonNode record, String name) {
        return record.get("inputs").get(name).asDouble();
    }

    static double expected(JsonNode record, String name) {
        return record.get("expected").get(name).asDouble();
    }

    /** The tolerance of the record in the unit of the expected value; the larger of relative and absolute counts. */
    static double tolerance(JsonNode record, String name) {
        JsonNode tolerance = record.get("tolerance");
        double relative = tolerance.has("rel") ? tolerance.get("rel").asDouble() : 0;
        double absolute = tolerance.has("abs") ? tolerance.get("abs").asDouble() : 0;
        return Math.max(relative * Math.abs(expected(record, name)), absolute);
    }

    static double[] inputs(JsonNode record, String name) {
        JsonNode list = record.get("inputs").get(name);
        double[] numbers = new double[list.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = list.get(i).asDouble();
        }
        return numbers;
    }

    private static JsonNode all() {
        try (InputStream in = Checks.class.getResourceAsStream("/checks/coverage.json")) {
            return JsonMapper.builder().build().readTree(in);
        } catch (IOException e) {
            throw new IllegalStateException("checks/coverage.json cannot be read", e);
        }
    }
}
