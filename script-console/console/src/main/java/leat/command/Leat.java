package leat.command;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program {@code leat}. Without a command it says how to use it and ends with exit code 2. */
@Command(
        name = "leat",
        description = "Plans the water of a yard.",
        mixinStandardHelpOptions = true,
        versionProvider = Leat.Version.class,
        exitCodeOnExecutionException = 70)
public final class Leat implements Runnable {

    @Spec
    private CommandSpec spec;

    public static void main(String[] arguments) {
        System.exit(new CommandLine(new Leat()).execute(arguments));
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "say what to do");
    }

    /** The version in the jar's manifest; "unreleased" when run from class files. */
    static final class Version implements IVersionProvider {

        @Override
        public String[] getVersion() {
            String version = Leat.class.getPackage().getImplementationVersion();
            return new String[] {"leat " + (version == null ? "unreleased" : version)};
        }
    }
}
