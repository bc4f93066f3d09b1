package leat.script;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A session to open.
 *
 * @param folder   in which files are found by name
 * @param settings what {@code param(name, …)} gives in place of its default, as text
 * @param limit    the longest time that one entry may take; zero for no limit
 */
public record SessionRequest(Path folder, SortedMap<String, String> settings, Duration limit) {

    /** What messages call the place of an entry, as they call a script by its file. */
    static final Path NAME = Path.of("input");

    public SessionRequest {
        settings = Collections.unmodifiableSortedMap(new TreeMap<>(settings));
    }

    ScriptRequest asScript() {
        return new ScriptRequest(NAME, settings, limit);
    }

    ScriptFolder scriptFolder() {
        return ScriptFolder.of(folder.toAbsolutePath().normalize().resolve(NAME));
    }
}
