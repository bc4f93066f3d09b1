package leat.report;

import java.util.Comparator;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.assess.Assessment;
import leat.calc.hydraulics.HydraulicsResult;
import leat.calc.wiring.WiringResult;
import leat.model.id.Id;
import leat.model.power.Circuit;
import leat.model.power.PowerSystem;
import leat.model.quantity.Quantity;

/** Picks out of an assessment what the tables show. */
final class AssessedFigures {

    private final SortedMap<Id, SortedMap<String, Quantity>> byId = new TreeMap<>();

    private AssessedFigures() {}

    static ReportFigures of(Assessment assessment) {
        AssessedFigures figures = new AssessedFigures();
        figures.add(assessment);
        figures.add(assessment.wiring(), assessment.yard().power());
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

    private void add(WiringResult wiring, PowerSystem power) {
        wiring.circuits().forEach(circuit -> {
            put(circuit.id(), ReportFigures.CURRENT, circuit.current());
            put(circuit.id(), ReportFigures.RECKONED, circuit.reckoned());
            circuit.ampacity().ifPresent(one -> put(circuit.id(), ReportFigures.AMPACITY, one));
            wiring.loads().stream()
                    .filter(load -> load.circuit().equals(circuit.id()))
                    .flatMap(load -> load.drop().stream())
                    .max(Comparator.naturalOrder())
                    .ifPresent(most -> put(circuit.id(), ReportFigures.DROP, most));
        });
        wiring.loads().forEach(load -> load.drop().ifPresent(one -> put(load.id(), ReportFigures.DROP, one)));
        wiring.loads().stream()
                .filter(load -> power.circuit(load.circuit())
                        .filter(Circuit::isLowVoltage)
                        .isPresent())
                .forEach(load -> load.voltage().ifPresent(one -> put(load.id(), ReportFigures.VOLTAGE, one)));
        wiring.transformers().forEach(one -> put(one.id(), ReportFigures.LOADED, one.loaded()));
        wiring.cables().forEach(cable -> {
            cable.current().ifPresent(one -> put(cable.id(), ReportFigures.CURRENT, one));
            cable.ampacity().ifPresent(one -> put(cable.id(), ReportFigures.AMPACITY, one));
            cable.lost().ifPresent(one -> put(cable.id(), ReportFigures.LOST, one));
        });
        wiring.conduits()
                .forEach(conduit -> conduit.fill().ifPresent(fill -> {
                    put(conduit.id(), ReportFigures.FILL, fill);
                    put(conduit.id(), ReportFigures.MOST_FILL, conduit.most());
                }));
    }

    private void put(Id id, String name, Quantity figure) {
        byId.computeIfAbsent(id, one -> new TreeMap<>()).put(name, figure);
    }
}
