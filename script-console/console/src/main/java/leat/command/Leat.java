package leat.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program {@code leat}. Without a command it says how to use it and ends with exit code 2. */
@Command(
        name = "leat",
        description = "Plans the water of a yard.",
        versionProvider = Leat.Version.class,
        subcommands = {RunCommand.class, AssessCommand.class, ReportCommand.class, ConsoleCommand.class},
        footer = {
            "",
            "Exit codes: 0 fine; 1 the plan has a breach; 2 wrong usage or input; 3 the script failed; 70 a defect of Leat.",
            "Plans are a help, no permit: local codes and licensed people have the last word."
        })
public final class Leat implements Runnable {

    @Spec
    private CommandSpec spec;

    public static void main(String[] arguments) {
        CommandLine line = commandLine();
        line.setOut(new PrintWriter(System.out, false, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(System.err, false, StandardCharsets.UTF_8));
        System.exit(execute(line, arguments));
    }

    private static int execute(CommandLine line, String[] arguments) {
        try {
            return line.execute(arguments);
        } catch (OutOfMemoryError | StackOverflowError | LinkageError | AssertionError error) {
            return Failures.ofProgram(error, line.getErr());
        } finally {
            line.getOut().flush();
            line.getErr().flush();
        }
    }

    /** The program, ready to be given arguments. */
    static CommandLine commandLine() {
        CommandLine line = new CommandLine(new Leat());
        line.getCommandSpec()
                .addOption(OptionSpec.builder("-V", "--version")
                        .versionHelp(true)
                        .description("Shows the version.")
                        .build());
        addHelp(line);
        return line.setParameterExceptionHandler(Failures::ofUsage).setExecutionExceptionHandler(Failures::ofWork);
    }

    private static void addHelp(CommandLine line) {
        line.getCommandSpec()
                .addOption(OptionSpec.builder("-h", "--help")
                        .usageHelp(true)
                        .description("Shows this help.")
                        .build());
        line.getSubcommands().values().forEach(Leat::addHelp);
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
