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
import leat.calc.coverage.CoverageResult;
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
    private final CoverageResult coverage;
    private final ReportFigures figures;
    private final List<Sheet> sheets;

    Page(Yard yard, CoverageResult coverage, ReportFigures figures, List<Sheet> sheets) {
        this.yard = yard;
        this.coverage = coverage;
        this.figures = figures;
        this.sheets = List.copyOf(sheets);
    }

    byte[] html() {
        // Every user text is escaped; only our own style sheet and drawings go in as they are.
        Template template = Mustache.compiler().escapeHTML(true).compile(resource("report.mustache"));
        return template.execute(context()).getBytes(StandardCharsets.UTF_8);
    }

    private Map<String, Object> context() {
        Map<String, Object> context = new TreeMap<>();
        context.put("name", yard.name());
        context.put("edition", yard.edition());
        context.put("units", yard.units() == UnitSystem.US ? "US units" : "metric units");
        context.put("general", Cautions.GENERAL);
        context.put("standing", Cautions.STANDING);
        context.put("css", resource("report.css"));
        context.put("sheetCss", sheets.stream().map(Sheet::css).collect(Collectors.joining()));
        context.put("sheets", sheets.stream().map(Page::sheet).toList());
        context.put("verdict", verdict());
        context.put("tally", tally());
        context.put("facts", new Facts(yard).lines());
        context.put("schedules", schedules());
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

    private List<Map<String, Object>> schedules() {
        Schedules schedules = new Schedules(yard, figures);
        List<Map<String, Object>> sections = new ArrayList<>();
        section(
                sections,
                "surfaces",
                "Coverage of lawns and beds",
                "A lawn wants each spot within reach of two heads, a bed of one. Evenness is the mean of the driest"
                        + " quarter over the mean of all (low quarter), and Christiansen's coefficient.",
                CoverageTable.of(coverage, yard.units()));
        section(sections, "valves", "Valve schedule", "", schedules.valves());
        section(
                sections,
                "heads",
                "Head schedule",
                "Places are from the yard's datum. An arc runs clockwise from the bearing where it begins.",
                schedules.heads());
        section(sections, "pipes", "Pipe schedule", "", schedules.pipes());
        section(sections, "bibs", "Hose bib schedule", "", schedules.bibs());
        section(
                sections,
                "trenches",
                "Trench list",
                "Depth is from finished grade to the bottom.",
                schedules.trenches());
        return sections;
    }

    private static void section(
            List<Map<String, Object>> sections, String id, String title, String about, Table table) {
        if (table.isEmpty()) {
            return;
        }
        Table shown = table.withoutEmptyColumns();
        List<Map<String, Object>> heads = new ArrayList<>();
        for (int i = 0; i < shown.columns().size(); i++) {
            int column = i;
            boolean number =
                    shown.rows().stream().anyMatch(row -> row.get(column).number());
            heads.add(Map.of("text", shown.columns().get(i), "number", number));
        }
        List<Map<String, Object>> rows = shown.rows().stream()
                .map(row -> Map.<String, Object>of(
                        "cells", row.stream().map(Page::cell).toList()))
                .toList();
        Map<String, Object> section = new TreeMap<>();
        section.put("id", id);
        section.put("title", title);
        section.put("about", about.isEmpty() ? List.of() : List.of(Map.of("about", about)));
        section.put("table", Map.of("heads", heads, "rows", rows));
        sections.add(section);
    }

    private static Map<String, Object> cell(Cell cell) {
        Map<String, Object> map = new TreeMap<>();
        map.put("text", cell.text());
        String kind = cell.number() ? "number" : WaterStyle.cssOf(cell.text());
        map.put("kind", kind.isEmpty() ? List.of() : List.of(Map.of("kind", kind)));
        return map;
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
