package leat.script;

import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.assess.Assessment;
import leat.model.plan.Yard;

/** What a script has brought about so far: which yard it is about, and the files of its reports. */
final class Results {

    private final SortedMap<String, byte[]> files = new TreeMap<>();
    private Optional<Yard> planned = Optional.empty();
    private Optional<Assessment> assessed = Optional.empty();
    private Optional<Assessment> reported = Optional.empty();

    void planned(Yard yard) {
        planned = Optional.of(yard);
    }

    void assessed(Assessment assessment) {
        assessed = Optional.of(assessment);
    }

    /**
     * Keeps the files of a report.
     *
     * @param folder within the output folder; empty for that itself
     * @throws ScriptMistake if another report went there
     */
    void reported(String folder, Assessment assessment) {
        String prefix = folder.isEmpty() ? "" : folder + "/";
        if (files.containsKey(prefix + YardReport.DOCUMENT)) {
            throw new ScriptMistake(
                    "a report was made there already; give each a folder of its own: report(yard, \"dry year\")",
                    "report");
        }
        YardReport.files(assessment).forEach((name, bytes) -> files.put(prefix + name, bytes));
        reported = Optional.of(assessment);
    }

    /** The assessment of that yard, if it was the last one made. */
    Optional<Assessment> known(Yard yard) {
        return assessed.filter(assessment -> assessment.yard().equals(yard));
    }

    SortedMap<String, byte[]> takeFiles() {
        SortedMap<String, byte[]> taken = new TreeMap<>(files);
        files.clear();
        return taken;
    }

    ScriptOutcome outcome() {
        Optional<Assessment> last = reported.or(() -> assessed);
        return new ScriptOutcome(last.map(Assessment::yard).or(() -> planned), last, files);
    }
}
