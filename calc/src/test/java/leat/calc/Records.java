package leat.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Records of resources/checks: published and recomputed figures, each with its source, standing and tolerance. */
public final class Records {

    private Records() {}

    /** One record of a file. */
    public record Figure(JsonNode json) {

        public String id() {
            return json.required("id").asString();
        }

        public double input(String name) {
            return json.required("inputs").required(name).asDouble();
        }

        /** Holds a figure against the printed one, to the precision of the print. */
        public void expect(String name, double actual) {
            double expected = json.required("expected").required(name).asDouble();
            JsonNode tolerance = json.required("tolerance");
            double widest = Math.max(
                    tolerance.path("abs").asDouble(0.0), tolerance.path("rel").asDouble(0.0) * Math.abs(expected));
            assertEquals(expected, actual, widest, toString());
        }

        @Override
        public String toString() {
            return id() + ": " + json.required("source").asString() + " ("
                    + json.required("standing").asString() + ")";
        }
    }

    /** The records of {@code checks/FILE.json} whose id begins so; there is at least one. */
    public static List<Figure> of(String file, String prefix) {
        String path = "/checks/" + file + ".json";
        try (InputStream in = Objects.requireNonNull(Records.class.getResourceAsStream(path), path)) {
            JsonNode array = JsonMapper.shared().readTree(in);
            Stream<JsonNode> all = StreamSupport.stream(array.spliterator(), false);
            List<Figure> found = all.map(Figure::new)
                    .filter(figure -> figure.id().startsWith(prefix))
                    .toList();
            if (found.isEmpty()) {
                throw new IllegalArgumentException(path + " has no record that begins with " + prefix);
            }
            return found;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Figure one(String file, String id) {
        return of(file, id).stream()
                .filter(figure -> figure.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
