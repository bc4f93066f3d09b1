package leat.script;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.assess.Assessment;
import leat.document.YardDocument;
import leat.report.Report;

/** The files of a report on an assessed yard: drawings, tables, findings, and the yard's own document to go on from. */
public final class YardReport {

    /** The yard's document among the files. */
    static final String DOCUMENT = "plan.yard.json";

    private YardReport() {}

    /** All files by name; nothing is written. */
    public static SortedMap<String, byte[]> files(Assessment assessment) {
        SortedMap<String, byte[]> files = new TreeMap<>(Report.files(assessment));
        files.put(DOCUMENT, YardDocument.write(assessment.yard()).getBytes(StandardCharsets.UTF_8));
        return Collections.unmodifiableSortedMap(files);
    }
}
