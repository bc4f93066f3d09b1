package leat.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.calc.assess.Assessment;
import leat.calc.hydraulics.ZoneRun;
import leat.model.finding.Finding;
import leat.model.finding.Severity;
import leat.model.plan.Yard;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;
import leat.model.water.Zone;
import leat.script.PlainText;

/** A plan and what was found, on a screen: the yard, its zones, then the findings, worst first. */
final class Summary {

    /** Of each severity below a breach no more are listed; the report has them all. */
    private static final int MOST_LISTED = 10;

    private final Yard yard;
    private final Optional<Assessment> assessment;
    private final List<Finding> findings;
    private final Terminal terminal;

    Summary(Yard yard, Optional<Assessment> assessment, Terminal terminal) {
        this.yard = yard;
        this.assessment = assessment;
        this.findings = assessment.map(Assessment::findings).orElse(List.of());
        this.terminal = terminal;
    }

    String text() {
        List<String> lines = new ArrayList<>();
        lines.add(PlainText.text(yard, yard.units()));
        for (Zone zone : yard.water().zones()) {
            lines.add("  zone " + zone.id().name() + ": "
                    + PlainText.counted(zone.heads().size(), "head") + flow(zone));
        }
        lines.add(counts());
        for (Severity severity : Severity.values()) {
            addFindings(severity, lines);
        }
        return String.join("\n", lines);
    }

    private String flow(Zone zone) {
        ZoneRun run = assessment.isEmpty()
                ? null
                : assessment.get().hydraulics().zones().get(zone.id());
        return run == null || run.heads().isEmpty() ? "" : ", " + Units.show(run.flow(), yard.units());
    }

    /** {@code 1 breach, 2 cautions, 7 notes}, or that nothing was found. */
    private String counts() {
        List<String> counts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            int count = (int) count(severity);
            if (count > 0) {
                counts.add(PlainText.counted(count, severity.label()));
            }
        }
        if (assessment.isEmpty()) {
            return "not assessed";
        }
        return counts.isEmpty() ? "nothing found against the plan" : String.join(", ", counts);
    }

    private long count(Severity severity) {
        return findings.stream()
                .filter(finding -> finding.severity() == severity)
                .count();
    }

    private void addFindings(Severity severity, List<String> lines) {
        long most = severity == Severity.BREACH ? Long.MAX_VALUE : MOST_LISTED;
        findings.stream()
                .filter(finding -> finding.severity() == severity)
                .limit(most)
                .forEach(finding -> lines.add("  " + line(finding, yard.units())));
        long left = count(severity) - most;
        if (left > 0) {
            lines.add("  and " + PlainText.counted((int) left, "more " + severity.label()));
        }
    }

    private String line(Finding finding, UnitSystem units) {
        String label = finding.severity().label();
        return coloured(finding.severity()) + PlainText.finding(finding, units).substring(label.length());
    }

    private String coloured(Severity severity) {
        return switch (severity) {
            case BREACH -> terminal.red(severity.label());
            case CAUTION -> terminal.yellow(severity.label());
            case NOTE -> severity.label();
        };
    }
}
