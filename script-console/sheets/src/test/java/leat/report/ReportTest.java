package leat.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.calc.Progress;
import leat.calc.assess.Assessment;
import leat.calc.assess.Assessor;
import leat.calc.coverage.Coverage;
import leat.calc.coverage.CoverageParameters;
import leat.calc.coverage.CoverageResult;
import leat.document.StandingData;
import leat.draw.Colour;
import leat.draw.Drawing;
import leat.draw.Mark;
import leat.model.finding.Citation;
import leat.model.finding.Finding;
import leat.model.finding.Limit;
import leat.model.finding.Rule;
import leat.model.finding.Severity;
import leat.model.finding.Standing;
import leat.model.finding.Subject;
import leat.model.id.HeadId;
import leat.model.plan.Part;
import leat.model.plan.Parts;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Pressure;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Tag("law")
class ReportTest {

    private static final Finding WEAK = Finding.of(
            new Rule(
                    "hydraulics.pressure.least",
                    "each head has the least pressure of its family",
                    Limit.AT_LEAST,
                    Pressure.psi(20),
                    Severity.BREACH,
                    new Citation("the head family's own range", Standing.COMMON_PRACTICE)),
            Subject.of(new HeadId("R7")),
            Pressure.psi(17),
            "use the next size of pipe");

    private static ReportFigures figures() {
        SortedMap<String, Quantity> ofHead = new TreeMap<>(Map.of(ReportFigures.PRESSURE, Pressure.psi(17)));
        return new ReportFigures(new TreeMap<>(Map.of(new HeadId("R7"), ofHead)), List.of(WEAK));
    }

    private static CoverageResult coverage(Yard yard) {
        return Coverage.run(StandingData.load("leat-1").siteOf(yard), CoverageParameters.defaults(), Progress.NONE);
    }

    private static SortedMap<String, byte[]> files(Yard yard, ReportFigures figures) {
        return Report.files(yard, coverage(yard), figures);
    }

    private static String page(Yard yard, ReportFigures figures) {
        return new String(files(yard, figures).get("report.html"), StandardCharsets.UTF_8);
    }

    @Test
    void theSamePlanGivesTheSameBytes() throws Exception {
        for (Yard yard : List.of(TernHill.yardByHand(), MillCroft.yardByHand())) {
            ReportFigures figures = yard.name().equals("Tern Hill") ? figures() : ReportFigures.none();
            SortedMap<String, byte[]> once = files(yard, figures);
            SortedMap<String, byte[]> again = files(yard, figures);
            assertEquals(once.keySet(), again.keySet());
            Path folder = Files.createDirectories(Path.of("target", "reports", yard.name()));
            for (String name : once.keySet()) {
                assertArrayEquals(once.get(name), again.get(name), name);
                Files.write(folder.resolve(name), once.get(name));
            }
        }
    }

    @Test
    void thePageFetchesNothingAndRunsNothing() {
        String page = page(TernHill.yardByHand(), figures());
        assertFalse(page.contains("<script"));
        assertFalse(
                Pattern.compile("(?:src|href)\\s*=\\s*\"(?!#)").matcher(page).find());
        assertFalse(page.contains("@import"));
        Matcher urls = Pattern.compile("url\\(([^)]*)\\)").matcher(page);
        while (urls.find()) {
            assertTrue(urls.group(1).startsWith("#"), urls.group());
        }
    }

    @Test
    void everyIdInThePageIsThereOnceAndEveryReferenceIsMet() {
        String page = page(TernHill.yardByHand(), figures());
        TreeSet<String> ids = new TreeSet<>();
        Matcher matcher = Pattern.compile(" id=\"([^\"]*)\"").matcher(page);
        while (matcher.find()) {
            assertTrue(ids.add(matcher.group(1)), matcher.group(1));
        }
        Matcher references = Pattern.compile("(?:href=\"#|for=\"|aria-labelledby=\"|url\\(#)([^\")]*)")
                .matcher(page);
        while (references.find()) {
            assertTrue(ids.contains(references.group(1)), references.group(1));
        }
    }

    @Test
    void whatUsersNameIsShownNotRun() {
        Yard yard = Parts.yard("<script>alert(1)</script>")
                .with(
                        Parts.lawn(
                                "\"><img src=x onerror=alert(1)>",
                                Parts.rectangle(Parts.at(0, 0), Parts.feet(9), Parts.feet(9))),
                        Parts.spray("=cmd|'/c calc'!A1", Parts.at(0, 0))
                                .family("spray-2_4")
                                .arc(0, 90)
                                .radius(Parts.feet(8)),
                        Parts.spray("{{name}}", Parts.at(9, 9))
                                .family("spray-2_4")
                                .arc(180, 90)
                                .radius(Parts.feet(8)));
        SortedMap<String, byte[]> files = files(yard, ReportFigures.none());
        String page = new String(files.get("report.html"), StandardCharsets.UTF_8);
        assertFalse(page.contains("<script"));
        assertFalse(page.contains("<img"));
        assertTrue(page.contains("{{name}}"));
        String heads = new String(files.get("heads.csv"), StandardCharsets.UTF_8);
        assertTrue(heads.contains("\n'=cmd|"), heads);
    }

    @Test
    void figuresKeepTheirMinusAndTextsThatLookLikeFormulasAreGuarded() {
        assertEquals("-3.2", Csv.guarded(new Cell("-3.2", true)));
        for (String text : List.of("=A1", "+1", "-1", "@x", "\tx", "\rx")) {
            assertEquals("'" + text, Csv.guarded(Cell.text(text)));
        }
        assertEquals("R7", Csv.guarded(Cell.text("R7")));
    }

    @Test
    void theFindingStandsInThePageWithItsFiguresInTheYardsUnits() {
        String us = page(TernHill.yardByHand(), figures());
        assertTrue(us.contains("<td class=\"number\">17.0 psi</td><td class=\"number\">at least 20.0 psi</td>"));
        assertTrue(us.contains("the head family&#39;s own range (common practice, no source)"));
        String metric = page(TernHill.yardByHand().units(UnitSystem.METRIC), figures());
        assertTrue(metric.contains("<td class=\"number\">117 kPa</td><td class=\"number\">at least 138 kPa</td>"));
    }

    @Test
    void anAssessmentFillsTheTablesWithPressuresAndFlows() {
        Site site = StandingData.load("leat-1").siteOf(TernHill.yardByHand());
        Assessment assessment = Assessor.run(site, Progress.NONE);
        ReportFigures figures = AssessedFigures.of(assessment);
        HeadId head = new HeadId("R4");
        assertEquals(
                assessment.hydraulics().head(head).orElseThrow().pressure(),
                figures.of(head).get(ReportFigures.PRESSURE));
        SortedMap<String, byte[]> files = Report.files(assessment);
        assertArrayEquals(files.get("report.html"), Report.files(assessment).get("report.html"));
        String heads = new String(files.get("heads.csv"), StandardCharsets.UTF_8);
        assertTrue(
                Pattern.compile("(?m)^R4,rotor,.*,\\d+\\.\\d,\\d+\\.\\d\\d\r?$")
                        .matcher(heads)
                        .find(),
                heads);
    }

    @Test
    void anEmptyYardHasAReportToo() {
        String page = page(Yard.empty("Bare Ground", UnitSystem.METRIC), ReportFigures.none());
        assertTrue(page.contains("Bare Ground"));
        assertTrue(page.contains(Cautions.GENERAL));
    }

    @Test
    void eachCautionBelongsToSomethingThatAPlanCanHold() {
        TreeSet<String> met = new TreeSet<>(Hazards.in(TernHill.yardByHand()));
        met.addAll(Hazards.in(MillCroft.yardByHand()));
        met.addAll(Hazards.in(
                Parts.yard("High").with(Parts.mains("street", Parts.at(0, 0)).staticPressure(Parts.psi(95)))));
        met.addAll(Hazards.in(Parts.yard("Walk")
                .with(
                        Parts.panel("house", Parts.at(0, 0)).spareWays(1),
                        Parts.transformer("garden").at(Parts.at(1, 1)).rating(Parts.watts(100)))));
        assertEquals(new TreeSet<>(Cautions.topics()), met);
        assertEquals(List.of(), Hazards.in(Yard.empty("Bare Ground", UnitSystem.US)));
    }

    @Test
    void theThreeWatersDifferInColourAndInLetter() {
        TreeSet<String> looks = new TreeSet<>();
        for (WaterStyle style : WaterStyle.values()) {
            assertTrue(looks.add(style.colour().hex()));
            assertTrue(looks.add(style.letter()));
        }
        for (int i = 0; i < 16; i++) {
            ZoneStyle zone = ZoneStyle.of(i);
            assertTrue(looks.add(zone.toString()), "zone style " + i + " comes twice");
            assertFalse(looks.contains(zone.colour().hex()));
        }
    }

    /** Heads as close as in no garden: all are lettered, and drawing stays quick. */
    @Test
    @Timeout(30)
    void aCrowdOfHeadsIsLetteredWithinMoments() {
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            int row = i / 20;
            parts.add(Parts.spray("crowd " + (i + 1), Parts.at(4 * (i % 20), 4 * row))
                    .family("spray-2_4")
                    .arc(0, 90)
                    .radius(Parts.feet(8)));
        }
        Yard yard = Parts.yard("Crowd").with(parts.toArray(new Part[0]));
        Drawing drawing = PlanSheet.draw(yard, ReportFigures.none(), new WaterPlan(yard), "1 of 1");
        long lettered = drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Text text && text.text().startsWith("crowd "))
                .count();
        boolean noted = drawing.marks().stream()
                .anyMatch(mark ->
                        mark instanceof Mark.Text text && text.text().startsWith("Not lettered for want of room"));
        assertTrue(lettered == 300 || noted, "lettered " + lettered);
    }

    /** Source: WCAG 2.1, success criterion 1.4.3: letters have a contrast of at least 4.5 to 1. */
    @Test
    @Tag("reference")
    void lettersOfPipesCanBeRead() {
        for (WaterStyle style : WaterStyle.values()) {
            double contrast = 1.05 / (luminance(style.lettering()) + 0.05);
            assertTrue(contrast >= 4.5, style + " has " + contrast);
        }
    }

    /** Relative luminance as WCAG 2.1 defines it. */
    private static double luminance(Colour colour) {
        return 0.2126 * linear(colour.red()) + 0.7152 * linear(colour.green()) + 0.0722 * linear(colour.blue());
    }

    private static double linear(int part) {
        double share = part / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
