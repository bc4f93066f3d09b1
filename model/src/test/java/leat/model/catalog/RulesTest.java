package leat.model.catalog;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.finding.Citation;
import leat.model.finding.Finding;
import leat.model.finding.Limit;
import leat.model.finding.Rule;
import leat.model.finding.Severity;
import leat.model.finding.Standing;
import leat.model.finding.Subject;
import leat.model.id.HeadId;
import leat.model.quantity.Angle;
import leat.model.quantity.Area;
import leat.model.quantity.Length;
import leat.model.quantity.Quantity;
import leat.model.quantity.Ratio;
import leat.model.quantity.Velocity;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class RulesTest {

    private static Rule rule(String id, Limit side, Quantity limit) {
        return new Rule(
                id, "what it asks", side, limit, Severity.CAUTION, new Citation("a handbook", Standing.FROM_MEMORY));
    }

    private static Rules rules(Rule... some) {
        SortedMap<String, Rule> byId = new TreeMap<>();
        List.of(some).forEach(rule -> byId.put(rule.id(), rule));
        return new Rules(byId);
    }

    private final Rule velocity = rule("pipe.velocity", Limit.AT_MOST, Velocity.feetPerSecond(5));
    private final Rule cover = rule("trench.cover", Limit.AT_LEAST, Length.inches(12));
    private final Rules rules = rules(velocity, cover, rule("lawn.dry", Limit.AT_MOST, Area.ZERO));

    @Tag("law")
    @Test
    void theLimitItselfIsKept() {
        assertTrue(velocity.isKeptBy(Velocity.feetPerSecond(5)));
        assertFalse(velocity.isKeptBy(Velocity.feetPerSecond(5.000001)));
        assertTrue(cover.isKeptBy(Length.inches(12)));
        assertFalse(cover.isKeptBy(Length.inches(11.999999)));
    }

    @Tag("law")
    @Test
    void aYardsOwnLimitTakesThePlaceOfTheStandingOne() {
        Rules local = rules.with(List.of(new RuleLimit("trench.cover", Length.inches(18))));
        Rule stated = local.get("trench.cover");
        assertEquals(Length.inches(18), stated.limit());
        assertEquals(Citation.OF_THE_YARD, stated.citation());
        assertEquals(cover.severity(), stated.severity());
        assertEquals(velocity, local.get("pipe.velocity"));
        assertEquals(Length.inches(12), rules.get("trench.cover").limit(), "the standing table is not touched");
        assertEquals(rules, rules.with(List.of()));
        Finding finding = Finding.of(stated, Subject.of(new HeadId("R1")), Length.inches(15), "dig deeper");
        assertEquals(Length.inches(18), finding.limit());
        assertEquals(Severity.CAUTION, finding.severity());
    }

    @Tag("pinned")
    @Test
    void refusals() {
        refused(
                "rule: id is 'trench.cove'; it must be the id of a rule; perhaps 'trench.cover'",
                () -> rules.get("trench.cove"));
        refused("rule: id is 'zzzzzzz'; it must be the id of a rule", () -> rules.get("zzzzzzz"));
        refused(
                "rule pipe.velocity: limit is 3 m; it must be a velocity",
                () -> rules.with(List.of(new RuleLimit("pipe.velocity", Length.metres(3)))));
        refused(
                "rule lawn.dry: limit is 90 deg; it must be an area",
                () -> rules.with(List.of(new RuleLimit("lawn.dry", Angle.degrees(90)))));
        refused(
                "rule: id is 'no.such'; it must be the id of a rule",
                () -> rules.with(List.of(new RuleLimit("no.such", Ratio.ZERO))));
        refused(
                "rule pipe.velocity: key is 'other'; it must be its own id",
                () -> new Rules(new TreeMap<>(Collections.singletonMap("other", velocity))));
        refused(
                "rule limit a.b: id is used twice; it must be unique among its kind",
                () -> new Additions(
                        List.of(), List.of(new RuleLimit("a.b", Ratio.ZERO), new RuleLimit("a.b", Ratio.ZERO))));
    }

    @Tag("law")
    @Test
    void theCatalogueSuggestsTheNearestKey() {
        Catalog empty = Catalog.EMPTY;
        refused("device: key is 'meter-1'; it must be a key of the catalogue", () -> empty.device("meter-1"));
        refused("soil: key is 'silt'; it must be a key of the catalogue", () -> empty.soil("silt"));
    }
}
