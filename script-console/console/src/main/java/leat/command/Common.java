package leat.command;

import java.io.Console;
import java.util.Optional;
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

    boolean json() {
        return json;
    }

    boolean debug() {
        return debug;
    }

    Terminal terminal() {
        var line = spec.commandLine();
        return Terminal.of(line.getOut(), line.getErr(), isPersonThere(), System.getenv());
    }

    static boolean isPersonThere() {
        return Optional.ofNullable(System.console()).filter(Common::isTerminal).isPresent();
    }

    /** Since Java 22 there may be a console without a terminal, and a method that tells; before, neither. */
    private static boolean isTerminal(Console console) {
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (NoSuchMethodException before22) {
            return true;
        } catch (ReflectiveOperationException unknown) {
            return false;
        }
    }
}
