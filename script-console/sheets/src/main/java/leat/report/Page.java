package leat.report;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Severity;
import leat.model.plan.Yard;
import leat.model.quantity.UnitSystem;

/** The one page that holds the whole report, without anything fetched from elsewhere. */
final class Page {

    /** How many findings the summary names. */
    private static final int WORST = 6;

    private final Yard yard;
    private final ReportFigures figures;
    private final List<Sheet> sheets;
    private final List<Section> sections;

    Page(Yard yard, ReportFigures figures, List<Sheet> sheets, List<Section> sections) {
        this.yard = yard;
        this.figures = figures;
        this.sheets = List.copyOf(sheets);
        this.sections = sections.stream().filter(section -> !section.isEmpty()).toList();
    }

    byte[] html() {
        // Every user text is escaped; only our own style sheet and drawings go in as they are.
        Template template = Mustache.compiler().escapeHTML(true).compile(resource("report.mustache"));
        return template.execute(context()).getBytes(StandardCharsets.UTF_8);
    }

    private Map<String, Object> context() {
        Map<String, Object> context = new TreeMap<>();
        context.put("name", yard.name());
        context.put("what", yard.power().isEmpty() ? "Plan of the water" : "Plan of water and power");
        context.put("edition", yard.edition());
        context.put("units", yard.units() == UnitSystem.US ? "US units" : "metric units");
        context.put("general", Cautions.GENERAL);
        context.put("standing", Cautions.STANDING);
        context.put("css", resource("report.css"));
        context.put("paper", yard.units() == UnitSystem.US ? "letter" : "A4");
        context.put("sheetCss", sheets.stream().map(Sheet::css).collect(Collectors.joining()));
        context.put("sheets", sheets.stream().map(Page::sheet).toList());
        context.put("verdict", verdict());
        context.put("tally", tally());
        context.put("facts", new Facts(yard).lines());
        context.put("sections", sections.stream().map(SectionView::of).toList());
        context.put("chapters", chapters());
        context.put("hasFindings", !figures.findings().isEmpty());
        List<Map<String, Object>> findings = findings();
        List<Map<String, Object>> worst = findings.stream()
                .filter(one -> !Severity.NOTE.label().equals(one.get("severity")))
                .limit(WORST)
                .toList();
        context.put("findings", findings);
        context.put("worst", worst);
        context.put("hasWorst", !worst.isEmpty());
        context.put("more", findings.size() > worst.size());
        context.put(
                "cautions",
                Cautions.of(Hazards.in(yard)).stream()
                        .map(caution -> Map.of("topic", caution.topic(), "text", caution.text()))
                        .toList());
        return context;
    }

    private static Map<String, Object> sheet(Sheet sheet) {
        return Map.of(
                "id",
                sheet.id(),
                "title",
                sheet.title(),
                "about",
                sheet.about(),
                "svg",
                sheet.svg(),
                "switches",
                sheet.switches().stream()
                        .map(one -> Map.of("input", one.input(), "label", one.label(), "on", one.on()))
                        .toList());
    }

    private String verdict() {
        long breaches = count(Severity.BREACH);
        if (breaches > 0) {
            return "Not to be built so: " + plural(breaches, "breach", "breaches") + " of the rules.";
        }
        long cautions = count(Severity.CAUTION);
        return cautions == 0
                ? "No breach and no caution of the rules that were checked."
                : "No breach of the rules that were checked; look again at " + plural(cautions, "caution", "cautions")
                        + ".";
    }

    private List<Map<String, Object>> tally() {
        List<Map<String, Object>> tally = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            long count = count(severity);
            String many = severity == Severity.BREACH ? "es" : "s";
            tally.add(Map.of(
                    "kind",
                    severity.label(),
                    "count",
                    count,
                    "label",
                    count == 1 ? severity.label() : severity.label() + many));
        }
        return tally;
    }

    private long count(Severity severity) {
        return figures.findings().stream()
                .filter(finding -> finding.severity() == severity)
                .count();
    }

    static String plural(long count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /** The table of contents of the sections; chapters without any are left out. */
    private List<Map<String, Object>> chapters() {
        List<Map<String, Object>> chapters = new ArrayList<>();
        for (Chapter chapter : Chapter.values()) {
            List<Map<String, Object>> entries = sections.stream()
                    .filter(section -> section.chapter() == chapter)
                    .map(section -> Map.<String, Object>of("id", section.id(), "title", section.title()))
                    .toList();
            if (!entries.isEmpty()) {
                chapters.add(Map.of("chapter", chapter.title(), "entries", entries));
            }
        }
        return chapters;
    }

    private List<Map<String, Object>> findings() {
        List<Map<String, Object>> findings = new ArrayList<>();
        for (Finding finding : figures.sorted()) {
            findings.add(finding(findings.size() + 1, finding));
        }
        return findings;
    }

    private Map<String, Object> finding(int number, Finding finding) {
        Rule rule = finding.rule();
        return Map.of(
                "number", number,
                "severity", finding.severity().label(),
                "subject", Words.subject(finding.subject(), yard.units()),
                "rule", rule.title(),
                "measured", Words.show(finding.measured(), yard.units()),
                "limit", rule.side().label() + " " + Words.show(finding.limit(), yard.units()),
                "advice", finding.advice(),
                "source", rule.citation().toString());
    }

    private static String resource(String name) {
        try (InputStream stream = Page.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new AssertionError("resource missing: " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
