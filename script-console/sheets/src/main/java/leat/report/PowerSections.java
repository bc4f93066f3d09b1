package leat.report;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.assess.Assessment;
import leat.model.id.CableId;
import leat.model.plan.Yard;
import leat.model.power.CodeFamily;

/** The schedules of power and control; a yard without any shows none. */
final class PowerSections {

    private PowerSections() {}

    static List<Section> of(Assessment assessment, ReportFigures figures) {
        SortedMap<CableId, String> grounding = new TreeMap<>();
        assessment
                .wiring()
                .cables()
                .forEach(cable -> cable.grounding().ifPresent(size -> grounding.put(cable.id(), size)));
        return of(assessment.yard(), new PowerSchedules(assessment.yard(), figures, grounding));
    }

    static List<Section> of(Yard yard, ReportFigures figures) {
        return of(yard, new PowerSchedules(yard, figures, new TreeMap<>()));
    }

    private static List<Section> of(Yard yard, PowerSchedules schedules) {
        String family = yard.codeFamily() == CodeFamily.NFPA_70 ? "NFPA 70" : "IEC 60364";
        return List.of(
                Section.of(Chapter.POWER, "circuits", "Circuit schedule")
                        .say("Planned by the rules of " + family + ". Load is what the plan reckons with when all that"
                                + " a circuit feeds is turned on; reckoned is the"
                                + " current that its breaker is held for. A licensed"
                                + " electrician checks and connects every circuit;"
                                + " the code in force locally decides.")
                        .table("Panels", schedules.panels())
                        .table("Circuits", schedules.circuits())
                        .file("circuits.csv", schedules.circuits()),
                Section.of(Chapter.POWER, "loads", "Outlets, lights, feeds and controllers")
                        .table("", schedules.loads()),
                Section.of(Chapter.POWER, "cables", "Cable schedule")
                        .say("Lengths are those of the routes on the plan, without what is needed for connecting.")
                        .table("", schedules.cables())
                        .file("cables.csv", schedules.cables()),
                Section.of(Chapter.POWER, "conduits", "Conduit schedule")
                        .say("Power and control never share a conduit.")
                        .table("", schedules.conduits())
                        .file("conduits.csv", schedules.conduits()));
    }
}
