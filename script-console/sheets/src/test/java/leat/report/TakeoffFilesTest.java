package leat.report;

import static leat.model.plan.Parts.budget;
import static leat.model.plan.Parts.percent;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import leat.calc.Progress;
import leat.calc.assess.Assessment;
import leat.calc.assess.Assessor;
import leat.document.StandingData;
import leat.model.catalog.Price;
import leat.model.catalog.PriceBook;
import leat.model.plan.Yard;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("law")
class TakeoffFilesTest {

    private final Assessment assessment = assessed(List.of(
            Price.of("swing joint", "each", "4.10", "USD", "=1+1", "2026-03-31"),
            Price.of("hose bib", "each", "11.90", "USD", "shop", "2026-03-31")));

    private static Assessment assessed(List<Price> prices) {
        Yard yard = TernHill.yardByHand()
                .with(budget().prices(new PriceBook(prices)).waste(percent(10)).tax(percent(7)));
        return Assessor.run(StandingData.load("leat-1").siteOf(yard), Progress.NONE);
    }

    private String text(String name) {
        return new String(TakeoffFiles.of(assessment).get(name), StandardCharsets.UTF_8);
    }

    @Test
    void theSamePlanGivesTheSameBytes() throws Exception {
        SortedMap<String, byte[]> once = TakeoffFiles.of(assessment);
        Thread.sleep(5); // past the moment that the library would write
        SortedMap<String, byte[]> again = TakeoffFiles.of(assessment);
        assertEquals(List.of("budget.csv", "cuts.csv", "materials.csv", "materials.xlsx"), List.copyOf(once.keySet()));
        once.forEach((name, bytes) -> assertArrayEquals(bytes, again.get(name), name));
    }

    /** How a runtime packs is its own affair and changes from one to the next; what is stored does not. */
    @Test
    void theWorkbookIsStoredUnpackedAndUndated() throws Exception {
        byte[] workbook = TakeoffFiles.of(assessment).get("materials.xlsx");
        int parts = 0;
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(workbook))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                assertEquals(ZipEntry.STORED, entry.getMethod(), entry.getName());
                assertEquals(LocalDateTime.of(1980, 1, 1, 0, 0), entry.getTimeLocal(), entry.getName());
                parts++;
            }
        }
        assertTrue(parts > 5, "parts " + parts);
    }

    @Test
    void aSourceThatLooksLikeAFormulaIsTextInTableAndWorkbook() throws Exception {
        assertTrue(text("budget.csv").contains(",'=1+1,"), text("budget.csv"));
        SortedMap<String, String> parts = unpacked(TakeoffFiles.of(assessment).get("materials.xlsx"));
        assertFalse(parts.get("xl/worksheets/sheet3.xml").contains("<f>1+1"));
        assertTrue(parts.get("xl/sharedStrings.xml").contains("=1+1"));
    }

    @Test
    void theWorkbookReckonsFromItsOwnCells() throws Exception {
        SortedMap<String, String> parts = unpacked(TakeoffFiles.of(assessment).get("materials.xlsx"));
        String sheet = parts.get("xl/worksheets/sheet3.xml");
        long lines = assessment.budget().lines().size();
        long amounts =
                Pattern.compile("<f>IF\\(I\\d+=").matcher(sheet).results().count();
        assertEquals(lines, amounts);
        assertTrue(sheet.contains("SUMIFS("));
        assertFalse(parts.get("docProps/core.xml").contains("created"));
    }

    @Test
    void sumsAndWhatTheyLeaveOutStandBelowTheLines() {
        String csv = text("budget.csv");
        int missing = assessment.budget().withoutPrice().size();
        assertTrue(csv.contains("incomplete: " + missing + " lines"), csv);
        assertTrue(Pattern.compile("(?m)^now,sum,total,").matcher(csv).find(), csv);
        assertTrue(text("materials.csv").startsWith("when,kind,material,quantity,unit,"));
    }

    @Test
    void anAssessmentTellsWhereAMaterialGoes() {
        double heads = assessment.yard().water().heads().stream()
                .filter(head -> head.sector().isPresent())
                .count();
        assertEquals(heads, assessment.why("materials", "swing joint").value().si());
    }

    @Test
    void withoutPricesThereIsNoSum() {
        Assessment bare = assessed(List.of());
        String csv = new String(TakeoffFiles.of(bare).get("budget.csv"), StandardCharsets.UTF_8);
        assertFalse(csv.contains(",sum,"));
        assertTrue(csv.contains("no price"));
    }

    private static SortedMap<String, String> unpacked(byte[] packed) throws Exception {
        SortedMap<String, String> parts = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(packed))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                parts.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return parts;
    }
}
