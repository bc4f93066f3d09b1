package leat.console;

import java.nio.file.Path;
import java.util.Optional;
import leat.model.fault.LeatException;
import leat.script.ScriptSession;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;

/** The console for a person at a terminal. */
public final class TypedDialogue {

    private static final String PROMPT = "leat> ";
    private static final String PROMPT_WITHIN = "    | ";

    private final Terminal terminal;
    private final Outlet outlet;
    private final Optional<Path> history;

    /** @param history where entries are remembered from one time to the next; nothing to forget them */
    public TypedDialogue(Terminal terminal, Outlet outlet, Optional<Path> history) {
        this.terminal = terminal;
        this.outlet = outlet;
        this.history = history;
    }

    /** Reads and runs entries until the user leaves. Ctrl-C ends what runs, or drops what is being typed. */
    public void run(SessionOpener opener, String greeting) {
        outlet.message(greeting);
        try (ScriptSession session = new EarlySession(() -> opener.open(new OutletHost(outlet)))) {
            Entries entries = new Entries(session, outlet);
            LineReader reader = reader(session);
            terminal.handle(Terminal.Signal.INT, signal -> {
                terminal.writer().println(); // the terminal has written ^C into the line
                terminal.flush();
                session.interrupt();
            });
            while (true) {
                String text;
                try {
                    text = reader.readLine(PROMPT);
                } catch (UserInterruptException dropped) {
                    continue;
                } catch (EndOfFileException left) {
                    return;
                }
                if (text.strip().equals("exit")) {
                    return;
                }
                runOne(entries, text);
            }
        }
    }

    private void runOne(Entries entries, String text) {
        if (text.isBlank()) {
            return;
        }
        try {
            entries.run(text, 1);
        } catch (LeatException mistake) {
            outlet.message(outlet.red("! ") + mistake.getMessage());
        }
    }

    private LineReader reader(ScriptSession session) {
        EntryParser parser = new EntryParser(session);
        LineReaderBuilder builder = LineReaderBuilder.builder()
                .terminal(terminal)
                .appName("leat")
                .parser(parser)
                .completer(parser)
                .variable(LineReader.SECONDARY_PROMPT_PATTERN, PROMPT_WITHIN)
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true) // ! and \ mean themselves
                .option(LineReader.Option.HISTORY_IGNORE_SPACE, false)
                .option(LineReader.Option.HISTORY_IGNORE_DUPS, true)
                .option(LineReader.Option.AUTO_MENU, false) // a second Tab lists again and chooses nothing
                .option(LineReader.Option.INSERT_TAB, false);
        history.ifPresent(file -> builder.variable(LineReader.HISTORY_FILE, file));
        return builder.build();
    }
}
