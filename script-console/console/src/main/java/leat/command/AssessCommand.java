package leat.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import leat.calc.assess.Assessment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code leat assess}: judges the yard of a document. */
@Command(name = "assess", description = "Judges the yard of a document: every finding, the worst first.")
final class AssessCommand implements Callable<Integer> {

    @Mixin
    private final Common common = new Common();

    @Parameters(paramLabel = "FILE", description = "The document of a yard, usually named *.yard.json.")
    private Path file;

    @Override
    public Integer call() {
        Terminal terminal = common.terminal();
        Assessment assessment = terminal.assess(file);
        Ending ending = new Ending(common, terminal);
        ending.show(assessment.yard(), Optional.of(assessment));
        return ending.code(Optional.of(assessment));
    }
}
