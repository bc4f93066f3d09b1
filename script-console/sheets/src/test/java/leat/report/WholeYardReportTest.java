package leat.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.calc.Progress;
import leat.calc.assess.Assessment;
import leat.calc.assess.Assessor;
import leat.document.StandingData;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.Paper;
import leat.model.plan.Parts;
import leat.model.plan.Yard;
import leat.model.quantity.UnitSystem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The report of a yard with water, power, trenches and phases, and of yards that lack them. */
@Tag("law")
class WholeYardReportTest {

    private static SortedMap<String, byte[]> hill;
    private static SortedMap<String, byte[]> croft;

    @BeforeAll
    static void report() {
        hill = files(TernHillPower.yardByHand());
        croft = files(MillCroft.yardByHand());
    }

    private static SortedMap<String, byte[]> files(Yard yard) {
        Assessment assessment = Assessor.run(StandingData.load("leat-1").siteOf(yard), Progress.NONE);
        return Report.files(assessment);
    }

    private static String text(SortedMap<String, byte[]> files, String name) {
        return new String(files.get(name), StandardCharsets.UTF_8);
    }

    /** A browser prints all pages smaller, the sheets too, if one table is wider than its page. */
    @Test
    void wideTablesArePrintedOnLyingPagesSoThatSheetsStayToScale() {
        String page = text(hill, "report.html");
        assertTrue(page.contains("@page wide { size: letter landscape;"));
        assertTrue(page.contains("<section id=\"staking\" class=\"wide\">"));
        assertTrue(page.contains("<section id=\"valves\">"));
    }

    @Test
    void aWholeYardHasAllSheetsAndTables() {
        assertTrue(
                hill.keySet()
                        .containsAll(List.of(
                                "plan.svg",
                                "power.svg",
                                "trenches.svg",
                                "trench-sections.svg",
                                "coverage.svg",
                                "circuits.csv",
                                "cables.csv",
                                "conduits.csv",
                                "trenches.csv",
                                "staking.csv",
                                "materials.csv",
                                "budget.csv",
                                "work-plan.csv")),
                hill.keySet().toString());
        assertTrue(text(hill, "plan.svg").contains(">1 of 5<"));
        assertTrue(text(hill, "coverage.svg").contains(">5 of 5<"));
    }

    @Test
    void whatAYardDoesNotHaveTakesNoRoom() {
        TreeSet<String> absent = new TreeSet<>(List.of("power.svg", "circuits.csv", "trenches.svg", "trenches.csv"));
        absent.retainAll(croft.keySet());
        assertEquals(new TreeSet<>(), absent);
        for (String id : List.of("power", "circuits", "loads", "cables", "conduits", "trench-list", "phases")) {
            assertFalse(text(croft, "report.html").contains("id=\"" + id + "\""), id);
        }
        String bare = text(files(Yard.empty("Bare Ground", UnitSystem.METRIC)), "report.html");
        for (Chapter chapter : Chapter.values()) {
            assertFalse(bare.contains("<span>" + chapter.title() + "</span>"), chapter.title());
        }
    }

    @Test
    void whatIsMissingIsSaidInOneLineWithTheWordThatAddsIt() {
        String page = text(hill, "report.html");
        assertTrue(page.contains("<p class=\"missing\">Not computed: the yard states no prices. The words"));
        assertTrue(page.contains("<p class=\"missing\">Not computed: the yard states no climate. The words"));
    }

    @Test
    void eachEntryOfTheContentsLeadsToASectionWithSomethingInIt() {
        String page = text(hill, "report.html");
        Matcher entries = Pattern.compile("<li><a href=\"#([^\"]*)\">").matcher(page);
        int count = 0;
        while (entries.find()) {
            String section = "<section id=\"" + entries.group(1) + "\"";
            int at = page.indexOf(section);
            assertTrue(at > 0, section);
            String body = page.substring(at, page.indexOf("</section>", at));
            assertTrue(
                    Pattern.compile("<td|<svg|<li|class=\"missing\"|class=\"caution-text\"")
                            .matcher(body)
                            .find(),
                    section);
            count++;
        }
        assertTrue(count > 20, "only " + count);
    }

    /** Source: ISO 216 and ANSI/ASME Y14.1, as {@link Paper} has them. */
    @Test
    void metricYardsAreDrawnOnIsoSheetsAndUsYardsOnAnsiSheets() {
        hill.keySet().stream().filter(name -> name.endsWith(".svg")).forEach(name -> on(Paper.ANSI, hill, name));
        croft.keySet().stream().filter(name -> name.endsWith(".svg")).forEach(name -> on(Paper.ISO, croft, name));
    }

    private static void on(List<Paper> papers, SortedMap<String, byte[]> files, String name) {
        Matcher size =
                Pattern.compile("width=\"([0-9.]+)mm\" height=\"([0-9.]+)mm\"").matcher(text(files, name));
        assertTrue(size.find());
        double longMm = Math.max(Double.parseDouble(size.group(1)), Double.parseDouble(size.group(2)));
        assertTrue(papers.stream().anyMatch(paper -> paper.heightMm() == longMm), name + ": " + longMm + " mm");
    }

    @Test
    void aLineTellsWhenAThingIsBuiltWithoutItsColour() {
        TreeSet<String> looks = new TreeSet<>();
        for (PhaseStyle phase : PhaseStyle.values()) {
            var line = phase.line(LineWidth.W050, Palette.BLUE);
            looks.add(line.width() + " " + line.dash());
        }
        assertEquals(PhaseStyle.values().length, looks.size(), looks.toString());
        TreeSet<String> letters = new TreeSet<>();
        for (WireStyle style : WireStyle.values()) {
            assertTrue(letters.add(style.letter()));
        }
        for (WaterStyle style : WaterStyle.values()) {
            assertTrue(letters.add(style.letter()), "a water and a wire share a letter");
        }
    }

    @Test
    void circuitsStandWithLoadConductorAndProtection() {
        String circuits = text(hill, "circuits.csv");
        assertTrue(circuits.contains("\nworkshop,house panel,20.0,120,2,wires in conduit,at its origin,"), circuits);
        assertTrue(text(hill, "conduits.csv").contains("\nold duct,PVC-40,1,"), text(hill, "conduits.csv"));
        assertTrue(text(hill, "conduits.csv").contains(",3 of 12,"));
        assertTrue(text(hill, "report.html").contains("an empty conduit with a pull string"));
    }

    @Test
    void namesThatLookLikeFormulasAreNeutralisedInTheTablesOfPower() {
        Yard yard = Parts.yard("Formulas")
                .with(
                        Parts.panel("=cmd", Parts.at(0, 0)),
                        Parts.circuit("+1").from("=cmd").breaker(Parts.amps(15)),
                        Parts.outlet("@out", Parts.at(9, 9)).on("+1"),
                        Parts.conduit("-c", Parts.polyline(Parts.at(0, 0), Parts.at(9, 9))),
                        Parts.cable("=w", Parts.polyline(Parts.at(0, 0), Parts.at(9, 9)))
                                .circuit("+1")
                                .from("=cmd")
                                .to("@out")
                                .through("-c"));
        SortedMap<String, byte[]> files = files(yard);
        assertTrue(text(files, "circuits.csv").contains("\n'+1,'=cmd,15.0,"), text(files, "circuits.csv"));
        assertTrue(text(files, "cables.csv").contains("\n'=w,"));
        assertTrue(text(files, "conduits.csv").contains("\n'-c,"));
    }
}
