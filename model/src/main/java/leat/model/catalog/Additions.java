package leat.model.catalog;

import java.util.List;
import leat.model.fault.Require;

/** What a yard adds to or changes in the standing tables. */
public record Additions(List<HeadFamily> heads, List<RuleLimit> limits) {

    public static final Additions NONE = new Additions(List.of(), List.of());

    public Additions {
        heads = Require.unique("head family", heads, HeadFamily::key);
        limits = Require.unique("rule limit", limits, RuleLimit::rule);
    }
}
