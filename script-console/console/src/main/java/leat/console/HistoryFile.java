package leat.console;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Where a user's entries are remembered: where the platform keeps such things, never beside a plan. */
public final class HistoryFile {

    private HistoryFile() {}

    /**
     * The file for this user.
     *
     * @param language    whose entries it holds
     * @param system      the name of the operating system, as Java gives it
     * @param home        the user's folder
     * @param environment of the process
     */
    public static Path of(String language, String system, Path home, Map<String, String> environment) {
        return folder(system, home, environment).resolve("leat").resolve("history-" + language);
    }

    private static Path folder(String system, Path home, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return usable(
                    environment.get("LOCALAPPDATA"), home.resolve("AppData").resolve("Local"));
        }
        if (name.startsWith("mac")) {
            return usable(null, home.resolve("Library").resolve("Application Support"));
        }
        return usable(environment.get("XDG_STATE_HOME"), home.resolve(".local").resolve("state"));
    }

    private static Path usable(@Nullable String stated, Path usual) {
        // A folder that is not absolute is to be passed over, says the XDG base directory specification, version 0.8.
        boolean usable = stated != null && Path.of(stated).isAbsolute();
        return usable ? Path.of(stated) : usual;
    }
}
