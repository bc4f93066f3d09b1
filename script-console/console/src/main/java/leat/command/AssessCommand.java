package leat.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import leat.calc.assess.Assessment;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Ledger;
import leat.script.PlainText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leat assess}: judges the yard of a document, or explains figures of it. */
@Command(name = "assess", description = "Judges the yard of a document: every finding, the worst first.")
final class AssessCommand implements Callable<Integer> {

    @Mixin
    private final Common common = new Common();

    @Option(
            names = "--why",
            paramLabel = "THING:FIGURE",
            description =
                    "Explains a figure in place of the findings, such as \"zone-1: minutes July\"; may be repeated.")
    private final List<String> questions = new ArrayList<>();

    @Parameters(paramLabel = "FILE", description = "The document of a yard, usually named *.yard.json.")
    private Path file;

    @Override
    public Integer call() {
        if (common.json() && !questions.isEmpty()) {
            throw new InvalidValueException("assess", "--why", "given with --json", "given without it");
        }
        Terminal terminal = common.terminal();
        Assessment assessment = terminal.assess(file);
        Ending ending = new Ending(common, terminal);
        if (questions.isEmpty()) {
            ending.show(assessment.yard(), Optional.of(assessment));
        }
        for (String question : questions) {
            Ledger ledger = explain(assessment, question);
            terminal.result(ledger.figure() + " of " + ledger.subject());
            terminal.result(
                    PlainText.text(ledger, assessment.yard().units()).indent(2).stripTrailing());
        }
        return ending.code(Optional.of(assessment));
    }

    /** The name of a thing may have colons of its own; a figure has none. */
    private static Ledger explain(Assessment assessment, String question) {
        int colon = question.lastIndexOf(':');
        if (colon < 1) {
            throw new InvalidValueException(
                    "assess",
                    "--why",
                    "'" + question + "'",
                    "a thing, a colon and a figure, such as \"main: velocity\"");
        }
        return assessment.why(
                question.substring(0, colon).strip(),
                question.substring(colon + 1).strip());
    }
}
