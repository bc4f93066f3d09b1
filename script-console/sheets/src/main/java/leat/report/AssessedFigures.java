package leat.report;

import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.assess.Assessment;
import leat.calc.hydraulics.HydraulicsResult;
import leat.model.id.Id;
import leat.model.quantity.Quantity;

/** Picks out of an assessment what the tables show. */
final class AssessedFigures {

    private final SortedMap<Id, SortedMap<String, Quantity>> byId = new TreeMap<>();

    private AssessedFigures() {}

    static ReportFigures of(Assessment assessment) {
        AssessedFigures figures = new AssessedFigures();
        figures.add(assessment);
        return new ReportFigures(figures.byId, assessment.findings());
    }

    private void add(Assessment assessment) {
        HydraulicsResult hydraulics = assessment.hydraulics();
        // Without a network that was solved there is only the flow that the heads ask for.
        assessment.zoning().zones().forEach((zone, figures) -> put(zone, ReportFigures.FLOW, figures.flow()));
        hydraulics.zones().forEach((zone, run) -> {
            if (run.status().isSolved()) {
                put(zone, ReportFigures.FLOW, run.flow());
            }
            run.heads().forEach((head, got) -> {
                put(head, ReportFigures.PRESSURE, got.pressure());
                put(head, ReportFigures.FLOW, got.flow());
            });
        });
        hydraulics.bibs().forEach((bib, run) -> {
            if (run.status().isSolved()) {
                put(bib, ReportFigures.PRESSURE, run.pressure());
            }
        });
        assessment
                .yard()
                .water()
                .pipes()
                .forEach(pipe -> hydraulics.pipe(pipe.id()).ifPresent(load -> {
                    put(pipe.id(), ReportFigures.FLOW, load.flow());
                    put(pipe.id(), ReportFigures.VELOCITY, load.velocity());
                    put(pipe.id(), ReportFigures.LOSS, load.loss());
                }));
    }

    private void put(Id id, String name, Quantity figure) {
        byId.computeIfAbsent(id, one -> new TreeMap<>()).put(name, figure);
    }
}
