package leat.command;

import java.io.PrintWriter;
import java.util.Set;
import leat.model.fault.Nearest;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what went wrong, in words, and gives the exit code. */
final class Failures {

    private static final String DEBUG = "--debug";

    private Failures() {}

    /** What the user typed makes no sense. */
    static int ofUsage(ParameterException failure, String[] arguments) {
        CommandLine line = failure.getCommandLine();
        PrintWriter messages = line.getErr();
        messages.println("leat: " + words(failure));
        messages.println("For help: " + line.getCommandSpec().qualifiedName() + " --help");
        messages.flush();
        return Exit.of(failure).code();
    }

    private static String words(ParameterException failure) {
        if (!(failure instanceof UnmatchedArgumentException unmatched)) {
            return String.valueOf(failure.getMessage());
        }
        String typed = unmatched.getUnmatched().get(0);
        CommandSpec command = failure.getCommandLine().getCommandSpec();
        boolean option = typed.startsWith("-");
        Set<String> names =
                option ? command.optionsMap().keySet() : command.subcommands().keySet();
        String kind = option ? "option " : names.isEmpty() ? "place for " : "command ";
        return "there is no " + kind + typed
                + Nearest.to(typed, names)
                        .map(name -> "; did you mean " + name + "?")
                        .orElse("");
    }

    /** The program itself broke. */
    static int ofProgram(Error error, PrintWriter messages) {
        messages.println(
                error instanceof OutOfMemoryError
                        ? "leat: there is not enough memory; LEAT_JAVA_OPTS=-Xmx4g gives more"
                        : "leat: this is a defect of Leat, not of your yard: " + error);
        return Exit.DEFECT.code();
    }

    /** The work ended early. */
    static int ofWork(Exception failure, CommandLine line, ParseResult parsed) {
        Exit exit = Exit.of(failure);
        PrintWriter messages = line.getErr();
        boolean debug = parsed.originalArgs().contains(DEBUG);
        messages.println(
                exit == Exit.DEFECT
                        ? "leat: this is a defect of Leat, not of your yard: " + failure
                        : "leat: " + failure.getMessage());
        if (debug) {
            failure.printStackTrace(messages);
        } else if (exit == Exit.DEFECT) {
            messages.println("With " + DEBUG + " it says more; please report that.");
        }
        messages.flush();
        return exit.code();
    }
}
