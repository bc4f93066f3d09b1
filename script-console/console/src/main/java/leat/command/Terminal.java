package leat.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import leat.calc.Progress;
import leat.calc.assess.Assessment;
import leat.calc.assess.Assessor;
import leat.document.YardFile;

/**
 * Where the program talks: results on one stream, messages on another. Colour and news of progress go to a person at a
 * terminal only, colour not if {@code NO_COLOR} is set.
 */
final class Terminal {

    private static final String RED = "\u001b[31m";
    private static final String YELLOW = "\u001b[33m";
    private static final String PLAIN = "\u001b[0m";
    private static final String CLEAR_LINE = "\r\u001b[K";

    private final PrintWriter results;
    private final PrintWriter messages;
    private final boolean isPerson;
    private final boolean colours;
    private String shown = "";

    private Terminal(PrintWriter results, PrintWriter messages, boolean isPerson, boolean colours) {
        this.results = results;
        this.messages = messages;
        this.isPerson = isPerson;
        this.colours = colours;
    }

    static Terminal of(PrintWriter results, PrintWriter messages, boolean isPerson, Map<String, String> environment) {
        boolean noColour = !environment.getOrDefault("NO_COLOR", "").isEmpty();
        boolean dumb = "dumb".equals(environment.get("TERM"));
        return new Terminal(results, messages, isPerson, isPerson && !noColour && !dumb);
    }

    /** Something that was asked for. */
    void result(String text) {
        clearProgress();
        results.println(text);
        results.flush();
    }

    /** Something that the user should know besides. */
    void message(String text) {
        clearProgress();
        messages.println(text);
        messages.flush();
    }

    /** Shown on one line that changes; nothing when nobody looks. */
    void progress(double fraction, String what) {
        String line = String.format("%3.0f %% %s", 100 * Math.min(1, Math.max(0, fraction)), what);
        if (isPerson && !line.equals(shown)) {
            messages.print(CLEAR_LINE + line);
            messages.flush();
            shown = line;
        }
    }

    void clearProgress() {
        if (!shown.isEmpty()) {
            messages.print(CLEAR_LINE);
            messages.flush();
            shown = "";
        }
    }

    /** Assesses the yard of a document, with news of how far it is. */
    Assessment assess(Path file) {
        Assessment assessment = Assessor.run(YardFile.loadSite(file), new Progress() {
            @Override
            public boolean stopped() {
                return false;
            }

            @Override
            public void at(double fraction, String what) {
                progress(fraction, what);
            }
        });
        clearProgress();
        return assessment;
    }

    String red(String text) {
        return colours ? RED + text + PLAIN : text;
    }

    String yellow(String text) {
        return colours ? YELLOW + text + PLAIN : text;
    }
}
