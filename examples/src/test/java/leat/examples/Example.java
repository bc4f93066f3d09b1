package leat.examples;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.calc.Progress;
import leat.calc.assess.Assessment;
import leat.calc.assess.Assessor;
import leat.document.StandingData;
import leat.model.finding.Finding;
import leat.model.plan.Yard;
import leat.script.JavaRunner;
import leat.script.ScriptHost;
import leat.script.ScriptOutcome;
import leat.script.ScriptRequest;
import leat.script.ScriptRunner;

/** An example that was run, and what its yard comes to when it is changed. */
record Example(ScriptOutcome outcome, List<String> printed) {

    /** @param script below the folder of examples, such as {@code first/first.js} */
    static Example run(String script) {
        List<String> printed = new ArrayList<>();
        ScriptHost host = new ScriptHost() {
            @Override
            public void print(String text) {
                printed.add(text);
            }

            @Override
            public void note(String text) {
                printed.add("note: " + text);
            }

            @Override
            public void progress(double fraction, String what) {
                // no one looks on
            }
        };
        ScriptRequest request = ScriptRequest.of(folder().resolve(script));
        ScriptOutcome outcome = script.endsWith(".jsh")
                ? JavaRunner.run(request, host)
                : ScriptRunner.ofLeat().run(request, host);
        return new Example(outcome, List.copyOf(printed));
    }

    /** Tests run in the module's folder or in the project's. */
    static Path folder() {
        return Files.isDirectory(Path.of("tern-hill")) ? Path.of(".") : Path.of("examples");
    }

    Yard yard() {
        return outcome.yard().orElseThrow();
    }

    Assessment assessment() {
        return outcome.assessment().orElseThrow();
    }

    static Assessment assess(Yard yard) {
        return Assessor.run(StandingData.load(yard.edition()).siteOf(yard), Progress.NONE);
    }

    /** What the damaged yard is found to have beyond this one, as rule and subject. */
    SortedSet<String> newFindings(Yard damaged) {
        SortedSet<String> found = names(assess(damaged).findings());
        found.removeAll(names(assessment().findings()));
        return found;
    }

    private static SortedSet<String> names(List<Finding> findings) {
        SortedSet<String> names = new TreeSet<>();
        findings.forEach(finding -> names.add(finding.rule().id() + ": " + finding.subject()));
        return names;
    }
}
