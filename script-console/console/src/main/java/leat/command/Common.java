package leat.command;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Options that all commands share. */
final class Common {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--json", description = "Prints the result as JSON, for other programs.")
    private boolean json;

    @Option(names = "--debug", description = "Shows where in the program a failure came from.")
    private boolean debug;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Shows this help.")
    private boolean help;

    boolean json() {
        return json;
    }

    boolean debug() {
        return debug;
    }

    Terminal terminal() {
        var line = spec.commandLine();
        return Terminal.of(line.getOut(), line.getErr(), System.console() != null, System.getenv());
    }
}
