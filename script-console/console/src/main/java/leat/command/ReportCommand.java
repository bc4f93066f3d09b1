package leat.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import leat.calc.assess.Assessment;
import leat.script.YardReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leat report}: judges the yard of a document and writes a report. */
@Command(name = "report", description = "Judges the yard of a document and writes drawings, tables and findings.")
final class ReportCommand implements Callable<Integer> {

    @Mixin
    private final Common common = new Common();

    @Parameters(paramLabel = "FILE", description = "The document of a yard, usually named *.yard.json.")
    private Path file;

    @Option(names = "--out", paramLabel = "DIR", description = "Where the files go; made if missing. Without it: out.")
    private Path out = Path.of("out");

    @Override
    public Integer call() {
        Terminal terminal = common.terminal();
        Assessment assessment = terminal.assess(file);
        Ending ending = new Ending(common, terminal);
        ending.write(out, YardReport.files(assessment));
        ending.show(assessment.yard(), Optional.of(assessment));
        return ending.code(Optional.of(assessment));
    }
}
