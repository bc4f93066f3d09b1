package leat.console;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.regex.Pattern;
import leat.calc.assess.Assessment;
import leat.script.ScriptSession;
import org.jspecify.annotations.Nullable;

/**
 * The console for a program: entries come through a pipe, there is no prompt, and the first mistake ends it. A line
 * that starts with a dot or {@code else} goes on with the entry before it.
 */
public final class PipedDialogue {

    private static final Pattern GOES_ON = Pattern.compile("\\s*(\\.|\\?\\.|else\\b|catch\\b|finally\\b).*");

    private final Outlet outlet;

    public PipedDialogue(Outlet outlet) {
        this.outlet = outlet;
    }

    /**
     * Runs all entries.
     *
     * @return the assessment made last, if any
     * @throws leat.script.ScriptFailedException at the first entry that fails
     */
    public Optional<Assessment> run(SessionOpener opener, Reader input) {
        try (ScriptSession session = opener.open(new OutletHost(outlet))) {
            Entries entries = new Entries(session, outlet);
            BufferedReader lines = new BufferedReader(input);
            int first = 1;
            StringBuilder entry = new StringBuilder();
            @Nullable String line = lines.readLine();
            for (int number = 1; line != null; number++) {
                if (entry.isEmpty()) {
                    first = number;
                }
                entry.append(line).append('\n');
                line = lines.readLine();
                boolean ends = line == null || !GOES_ON.matcher(line).matches();
                if (ends && !entry.toString().isBlank() && (line == null || session.isComplete(entry.toString()))) {
                    entries.run(entry.toString(), first);
                    entry.setLength(0);
                }
            }
            return session.assessment();
        } catch (IOException failure) {
            throw new UncheckedIOException("the input cannot be read", failure);
        }
    }
}
