package leat.command;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import leat.console.HistoryFile;
import leat.console.Outlet;
import leat.console.PipedDialogue;
import leat.console.SessionOpener;
import leat.console.TypedDialogue;
import leat.script.JavaScriptSession;
import leat.script.JavaSession;
import leat.script.SessionRequest;
import org.jline.terminal.TerminalBuilder;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code leat console}: Leat typed entry by entry, or piped into it. */
@Command(
        name = "console",
        description = "Runs what is typed, entry by entry; or what another program sends, up to the first mistake.")
final class ConsoleCommand implements Callable<Integer> {

    @Mixin
    private final Common common = new Common();

    @Option(names = "--folder", paramLabel = "DIR", description = "Where files are found by name. Without it: here.")
    private Path folder = Path.of("");

    @Option(names = "--out", paramLabel = "DIR", description = "Where reports go; made if missing. Without it: out.")
    private Path out = Path.of("out");

    @Option(
            names = "--set",
            paramLabel = "NAME=VALUE",
            description = "Gives a parameter (param) another value than its own. May be repeated.")
    private Map<String, String> settings = new TreeMap<>();

    @Option(names = "--timeout", paramLabel = "SECONDS", description = "Stops an entry after that time.")
    private @Nullable Double timeoutS;

    @Option(names = "--java", description = "Takes Java in place of JavaScript; it is not confined.")
    private boolean java;

    @Option(names = "--forget", description = "Keeps no history of what is typed.")
    private boolean forget;

    @Override
    public Integer call() {
        Terminal terminal = common.terminal();
        SessionRequest request = new SessionRequest(folder, new TreeMap<>(settings), TimeLimit.of(timeoutS));
        SessionOpener opener = host -> java ? JavaSession.open(request, host) : JavaScriptSession.open(request, host);
        Outlet outlet = new ConsoleOutlet(terminal, new Ending(common, terminal), out);
        if (Common.isPersonThere()) {
            typed(opener, outlet);
            return Exit.FINE.code();
        }
        var input = new InputStreamReader(System.in, StandardCharsets.UTF_8);
        return new Ending(common, terminal).code(new PipedDialogue(outlet).run(opener, input));
    }

    private void typed(SessionOpener opener, Outlet outlet) {
        try (var terminal = TerminalBuilder.builder().system(true).dumb(true).build()) {
            new TypedDialogue(terminal, outlet, history()).run(opener, greeting());
        } catch (IOException failure) {
            throw new UncheckedIOException("the terminal cannot be used", failure);
        }
    }

    private String greeting() {
        String language = java
                ? "Leat in Java. Java is not confined: it can read, write and start whatever you can."
                : "Leat in JavaScript.";
        return language + "\nhelp() explains, Tab completes, Ctrl-C stops what runs, Ctrl-D leaves.";
    }

    private Optional<Path> history() {
        return forget
                ? Optional.empty()
                : Optional.of(HistoryFile.of(
                        java ? "java" : "javascript",
                        System.getProperty("os.name"),
                        Path.of(System.getProperty("user.home")),
                        System.getenv()));
    }
}
