package leat.script;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A script to run.
 *
 * @param file     as the user named it; messages name it the same way
 * @param settings what {@code param(name, …)} gives in place of its default, as text
 * @param limit    the longest time that the script may take; zero for no limit
 */
public record ScriptRequest(Path file, SortedMap<String, String> settings, Duration limit) {

    public ScriptRequest {
        settings = Collections.unmodifiableSortedMap(new TreeMap<>(settings));
    }

    /** The file with no settings and no limit. */
    public static ScriptRequest of(Path file) {
        return new ScriptRequest(file, new TreeMap<>(), Duration.ZERO);
    }

    public ScriptRequest withSettings(Map<String, String> newSettings) {
        return new ScriptRequest(file, new TreeMap<>(newSettings), limit);
    }

    public ScriptRequest withLimit(Duration newLimit) {
        return new ScriptRequest(file, settings, newLimit);
    }
}
