package leat.bench;

import tools.jackson.databind.JsonNode;

/** One question that our kernel and its rivals answer on the same instance. */
public interface Bench {

    /** As typed on the command line. */
    String name();

    /** File in the test resources' folder {@code bench} that is taken when none is named. */
    String defaultInstance();

    /** Reads an instance and lets every entrant prepare; none of this is timed. */
    Contest contest(JsonNode instance);
}
