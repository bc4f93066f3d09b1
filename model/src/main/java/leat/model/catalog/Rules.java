package leat.model.catalog;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.finding.Rule;

/** The rules that designs are held against, by id. */
public record Rules(SortedMap<String, Rule> byId) {

    public Rules {
        byId = Collections.unmodifiableSortedMap(new TreeMap<>(byId));
    }

    /** The rule of that id; asking for one that is not in the standing table is refused with the nearest id. */
    public Rule get(String id) {
        Rule rule = byId.get(id);
        if (rule == null) {
            String nearest = Nearest.to(id, byId.keySet())
                    .map(near -> "; perhaps '" + near + "'")
                    .orElse("");
            throw new InvalidValueException("rule", "id", "'" + id + "'", "the id of a rule" + nearest);
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
