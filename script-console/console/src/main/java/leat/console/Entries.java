package leat.console;

import java.util.SortedMap;
import leat.script.ScriptSession;

/** Runs entries of a session one after the other and shows what comes of each. */
final class Entries {

    private final ScriptSession session;
    private final Outlet outlet;

    Entries(ScriptSession session, Outlet outlet) {
        this.session = session;
        this.outlet = outlet;
    }

    /** Somebody who types help alone wants it too. Throws what the session throws; the reports made up to then are written all the same. */
    void run(String text, int line) {
        try {
            String meant = text.strip().equals("help") ? "help()" : text;
            session.run(meant, line).ifPresent(shown -> outlet.result(Paint.severities(shown, outlet)));
        } finally {
            outlet.clearProgress();
            SortedMap<String, byte[]> files = session.takeFiles();
            if (!files.isEmpty()) {
                outlet.write(files);
            }
        }
    }
}
