package leat.document;

import java.util.List;
import java.util.Map;
import leat.model.finding.Finding;
import leat.model.finding.Severity;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.plan.Yard;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;

/** What an assessment found, as JSON for other programs. It is written only. */
public final class FindingsDocument {

    /** What the field {@code format} of every document of findings says. */
    public static final String FORMAT = "leat-findings";

    public static final int VERSION = 1;

    private FindingsDocument() {}

    /**
     * The findings in their order, and how many there are of each severity. Figures are text in the yard's units,
     * rounded to six digits. Same findings, same text; ends with a line feed.
     */
    public static String write(Yard yard, List<Finding> findings) {
        UnitSystem units = yard.units();
        FieldWriter summary = new FieldWriter(units);
        for (Severity severity : Severity.values()) {
            summary.number(
                    severity.label(),
                    Math.toIntExact(findings.stream()
                            .filter(one -> one.severity() == severity)
                            .count()));
        }
        return JsonText.print(new FieldWriter(units)
                .text("format", FORMAT)
                .number("version", VERSION)
                .text("yard", yard.name())
                .text("edition", yard.edition())
                .word("units", units)
                .object("summary", summary)
                .always("findings", Lists.map(findings, one -> finding(one, units)))
                .fields());
    }

    private static Map<String, Object> finding(Finding finding, UnitSystem units) {
        return new FieldWriter(units)
                .text("rule", finding.rule().id())
                .text("title", finding.rule().title())
                .text("severity", finding.severity().label())
                .object("subject", subject(finding.subject(), units))
                .text("measured", Units.rounded(finding.measured(), units))
                .text("side", finding.rule().side().label())
                .text("limit", Units.rounded(finding.limit(), units))
                .text("source", finding.rule().citation().text())
                .text("standing", finding.rule().citation().standing().label())
                .text("advice", finding.advice())
                .fields();
    }

    private static FieldWriter subject(Subject subject, UnitSystem units) {
        FieldWriter out = new FieldWriter(units);
        if (subject instanceof Subject.Thing thing) {
            out.text("kind", thing.id().kind()).id("id", thing.id());
            if (!thing.field().isEmpty()) {
                out.text("field", thing.field());
            }
            return thing.at().isEmpty() ? out : out.list("at", at(thing.at().get(), units));
        }
        if (subject instanceof Subject.Place place) {
            return out.text("kind", "place").list("at", at(place.point(), units));
        }
        return out.text("kind", "yard");
    }

    private static List<String> at(Point point, UnitSystem units) {
        return List.of(Units.rounded(point.east(), units), Units.rounded(point.north(), units));
    }
}
