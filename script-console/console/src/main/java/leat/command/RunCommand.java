package leat.command;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import leat.model.fault.LeatException;
import leat.script.JavaRunner;
import leat.script.ScriptHost;
import leat.script.ScriptOutcome;
import leat.script.ScriptRequest;
import leat.script.ScriptRunner;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leat run}: runs a script, writes what it reports, says what came of it. */
@Command(
        name = "run",
        description = "Runs a script that states, plans and judges a yard.",
        footer =
                "A JavaScript file sees the words of Leat and the files of its own folder, nothing else; Java is not confined.")
final class RunCommand implements Callable<Integer> {

    @Mixin
    private final Common common = new Common();

    @Parameters(paramLabel = "SCRIPT", description = "The script: JavaScript, or Java (*.java).")
    private Path script;

    @Option(names = "--out", paramLabel = "DIR", description = "Where reports go; made if missing. Without it: out.")
    private Path out = Path.of("out");

    @Option(
            names = "--set",
            paramLabel = "NAME=VALUE",
            description = "Gives a parameter of the script another value than its own. May be repeated.")
    private Map<String, String> settings = new TreeMap<>();

    @Option(
            names = "--timeout",
            paramLabel = "SECONDS",
            description = "Stops the script after that time. Without it, it may take as long as it wants.")
    private @Nullable Double timeoutS;

    @Option(names = "--unconfined", description = "Lets a script in Java run, which can do whatever you can.")
    private boolean unconfined;

    @Override
    public Integer call() {
        Terminal terminal = common.terminal();
        ScriptRequest request = ScriptRequest.of(script).withSettings(settings).withLimit(TimeLimit.of(timeoutS));
        ScriptOutcome outcome = isJava()
                ? JavaRunner.run(request, host(terminal))
                : ScriptRunner.ofLeat().run(request, host(terminal));
        terminal.clearProgress();
        Ending ending = new Ending(common, terminal);
        ending.write(out, outcome.files());
        outcome.yard().ifPresent(yard -> ending.show(yard, outcome.assessment()));
        return ending.code(outcome.assessment());
    }

    /** @throws LeatException for Java without the user's word that it may do what it wants */
    private boolean isJava() {
        String name = script.toString();
        boolean java = name.endsWith(".java") || name.endsWith(".jsh");
        if (java && !unconfined) {
            throw new LeatException(script
                    + " is Java, which is not confined: it can read, write and start whatever you can;"
                    + " if you trust it, add --unconfined");
        }
        return java;
    }

    /** With {@code --json} the result is for a program, so what the script prints goes to the messages. */
    private ScriptHost host(Terminal terminal) {
        return new ScriptHost() {
            @Override
            public void print(String text) {
                if (common.json()) {
                    terminal.message(text);
                } else {
                    terminal.result(text);
                }
            }

            @Override
            public void note(String text) {
                terminal.message("leat: " + text);
            }

            @Override
            public void progress(double fraction, String what) {
                terminal.progress(fraction, what);
            }
        };
    }
}
