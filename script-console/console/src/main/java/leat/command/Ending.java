package leat.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import leat.calc.assess.Assessment;
import leat.document.FindingsDocument;
import leat.model.finding.Finding;
import leat.model.plan.Yard;

/** How every command that judges a yard ends: files, then the result, then the exit code. */
final class Ending {

    private final Common common;
    private final Terminal terminal;

    Ending(Common common, Terminal terminal) {
        this.common = common;
        this.terminal = terminal;
    }

    /** Writes the files, if there are any, and says where. */
    void write(Path folder, SortedMap<String, byte[]> files) {
        if (!files.isEmpty()) {
            new OutputFolder(folder).write(files);
            terminal.message("written to " + folder + ": " + String.join(", ", files.keySet()));
        }
    }

    void show(Yard yard, Optional<Assessment> assessment) {
        List<Finding> findings = assessment.map(Assessment::findings).orElse(List.of());
        terminal.result(
                common.json()
                        ? FindingsDocument.write(yard, findings).stripTrailing()
                        : new Summary(yard, assessment, terminal).text());
    }

    int code(Optional<Assessment> assessment) {
        boolean breach = assessment.map(Assessment::hasBreach).orElse(false);
        return (breach ? Exit.BREACH : Exit.FINE).code();
    }
}
