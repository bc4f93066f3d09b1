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
     * @param system      the name of the operating system, as Java gives it
     * @param home        the user's folder
     * @param environment of the process
     */
    public static Path of(String system, Path home, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return folder(
                    environment.get("LOCALAPPDATA"), home.resolve("AppData").resolve("Local"));
        }
        if (name.startsWith("mac")) {
            return folder(null, home.resolve("Library").resolve("Application Support"));
        }
        return folder(environment.get("XDG_STATE_HOME"), home.resolve(".local").resolve("state"));
    }

    private static Path folder(@Nullable String stated, Path usual) {
        // A folder that is not absolute is to be passed over, says the XDG base directory specification, version 0.8.
        boolean usable = stated != null && Path.of(stated).isAbsolute();
        return (usable ? Path.of(stated) : usual).resolve("leat").resolve("history");
    }
}
