package leat.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Sentences that go with every plan, and those that go with what is in it; read from the resource cautions.md, which
 * says how they stand.
 */
final class Cautions {

    static final String GENERAL = "This plan is an aid to thinking and to buying. Local codes, the permit office, the"
            + " water supplier and licensed trades decide what may be built; where they differ from this plan, follow"
            + " them.";

    /** How the sentences stand. */
    static final String STANDING =
            "Standards and sections are named from memory; look them up in the edition in force.";

    private static final String RESOURCE = "cautions.md";

    /** One topic. */
    record Caution(String topic, String text) {}

    private static final SortedMap<String, Caution> BY_TOPIC = read();

    private Cautions() {}

    /** Those of the given topics, in their order; a topic that does not exist is a mistake of ours. */
    static List<Caution> of(List<String> topics) {
        List<Caution> cautions = new ArrayList<>();
        for (String topic : topics) {
            Caution caution = BY_TOPIC.get(topic);
            if (caution == null) {
                throw new AssertionError("no caution on " + topic);
            }
            cautions.add(caution);
        }
        return cautions;
    }

    static List<String> topics() {
        return List.copyOf(BY_TOPIC.keySet());
    }

    private static SortedMap<String, Caution> read() {
        String all;
        try (InputStream stream = Cautions.class.getResourceAsStream(RESOURCE)) {
            if (stream == null) {
                throw new AssertionError("resource missing: " + RESOURCE);
            }
            all = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        SortedMap<String, Caution> cautions = new TreeMap<>();
        String topic = "";
        for (String line : all.lines().toList()) {
            if (line.startsWith("## ")) {
                topic = line.substring(3).strip();
            } else if (!topic.isEmpty() && !line.isBlank()) {
                // The page is plain text; the stars of emphasis would show.
                cautions.put(topic, new Caution(topic, line.strip().replace("*", "")));
            }
        }
        return cautions;
    }
}
