package leat.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import leat.calc.assess.Assessment;
import org.junit.jupiter.api.Test;

/** The page of figures has each figure that can be asked, under what it is asked of and in the same order; and no others. */
class FiguresPageTest {

    private static final Pattern SECTION = Pattern.compile("(?ms)^## `([a-z ]+)`$(.*?)(?=^##|\\z)");
    private static final Pattern ROW = Pattern.compile("(?m)^\\| `([^`]+)` \\| [^|]+ \\|$");

    @Test
    void figuresAreThoseThatCanBeAsked() {
        Map<String, List<String>> described = new LinkedHashMap<>();
        for (MatchResult section : SECTION.matcher(Pages.read("docs/reference/figures.md"))
                .results()
                .toList()) {
            List<String> figures = new ArrayList<>();
            ROW.matcher(section.group(2)).results().forEach(row -> figures.add(row.group(1)));
            described.put(section.group(1), figures);
        }
        assertEquals(Assessment.figures(), described);
        assertEquals(List.copyOf(Assessment.figures().keySet()), List.copyOf(described.keySet()));
    }
}
