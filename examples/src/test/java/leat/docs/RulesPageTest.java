package leat.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import leat.document.StandingData;
import leat.model.finding.Rule;
import leat.model.plan.Yard;
import org.junit.jupiter.api.Test;

/** The page of rules has the rules of the standing table: no other ones, and with the same title, side, severity and standing. */
class RulesPageTest {

    private static final Pattern ROW = Pattern.compile("(?m)^\\| `([^`]+)` \\|.*$");

    private final SortedMap<String, Rule> rules =
            StandingData.load(Yard.EDITION).rules().byId();
    private final SortedMap<String, String> rows = rows();

    @Test
    void eachRuleHasARowAndEachRowIsARule() {
        assertEquals(new TreeSet<>(rules.keySet()), new TreeSet<>(rows.keySet()));
    }

    @Test
    void rowsSayWhatTheRulesSay() {
        rules.forEach((id, rule) -> {
            String row = rows.getOrDefault(id, "");
            assertTrue(row.contains("| " + rule.title() + " |"), row);
            assertTrue(row.contains("| " + rule.side().label() + " "), row);
            assertTrue(row.contains("| " + rule.severity().label() + " |"), row);
            assertTrue(row.contains("| " + rule.citation().text() + " |"), row);
        });
    }

    private static SortedMap<String, String> rows() {
        SortedMap<String, String> rows = new TreeMap<>();
        for (MatchResult row :
                ROW.matcher(Pages.read("docs/reference/rules.md")).results().toList()) {
            rows.put(row.group(1), row.group());
        }
        return rows;
    }
}
