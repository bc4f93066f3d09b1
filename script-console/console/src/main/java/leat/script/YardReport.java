package leat.script;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.assess.Assessment;
import leat.calc.hydraulics.HydraulicsResult;
import leat.document.YardDocument;
import leat.model.id.Id;
import leat.model.plan.Yard;
import leat.model.quantity.Quantity;
import leat.report.Report;
import leat.report.ReportFigures;

/** The files of a report on an assessed yard: drawings, tables, findings, and the yard's own document to go on from. */
public final class YardReport {

    /** The yard's document among the files. */
    static final String DOCUMENT = "plan.yard.json";

    private YardReport() {}

    /** All files by name; nothing is written. */
    public static SortedMap<String, byte[]> files(Assessment assessment) {
        Yard yard = assessment.yard();
        SortedMap<String, byte[]> files = new TreeMap<>(Report.files(yard, assessment.coverage(), figures(assessment)));
        files.put(DOCUMENT, YardDocument.write(yard).getBytes(StandardCharsets.UTF_8));
        return Collections.unmodifiableSortedMap(files);
    }

    private static ReportFigures figures(Assessment assessment) {
        SortedMap<Id, SortedMap<String, Quantity>> byId = new TreeMap<>();
        HydraulicsResult hydraulics = assessment.hydraulics();
        hydraulics.zones().forEach((zone, run) -> {
            put(byId, zone, ReportFigures.FLOW, run.flow());
            run.heads().forEach((head, got) -> {
                put(byId, head, ReportFigures.PRESSURE, got.pressure());
                put(byId, head, ReportFigures.FLOW, got.flow());
            });
        });
        hydraulics.bibs().forEach((bib, run) -> {
            // the pressure of a run that was not solved says nothing
            if (!run.pipes().isEmpty()) {
                put(byId, bib, ReportFigures.PRESSURE, run.pressure());
            }
        });
        assessment
                .yard()
                .water()
                .pipes()
                .forEach(pipe -> hydraulics.pipe(pipe.id()).ifPresent(load -> {
                    put(byId, pipe.id(), ReportFigures.FLOW, load.flow());
                    put(byId, pipe.id(), ReportFigures.VELOCITY, load.velocity());
                    put(byId, pipe.id(), ReportFigures.LOSS, load.loss());
                }));
        return new ReportFigures(byId, assessment.findings());
    }

    private static void put(SortedMap<Id, SortedMap<String, Quantity>> byId, Id id, String name, Quantity figure) {
        byId.computeIfAbsent(id, one -> new TreeMap<>()).put(name, figure);
    }
}
