package leat.model.catalog;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.fault.Require;
import leat.model.finding.Rule;

/** The rules that designs are held against, by id. */
public record Rules(SortedMap<String, Rule> byId) {

    public Rules {
        Require.present("rules", "byId", byId);
        byId = Collections.unmodifiableSortedMap(new TreeMap<>(byId));
        byId.forEach((id, rule) -> {
            if (!rule.id().equals(id)) {
                throw new InvalidValueException("rule " + rule.id(), "key", "'" + id + "'", "its own id");
            }
        });
    }

    /** The rule of that id; asking for one that is not in the standing table is refused with the nearest id. */
    public Rule get(String id) {
        Rule rule = byId.get(id);
        if (rule == null) {
            throw new InvalidValueException(
                    "rule", "id", "'" + id + "'", "the id of a rule" + Nearest.hint(id, byId.keySet()));
        }
        return rule;
    }

    /** The same rules with the limits that a yard states. */
    public Rules with(List<RuleLimit> limits) {
        SortedMap<String, Rule> changed = new TreeMap<>(byId);
        limits.forEach(one -> changed.put(one.rule(), get(one.rule()).stated(one.limit())));
        return new Rules(changed);
    }
}
