package leat.model.plan;

import leat.model.catalog.RuleLimit;

/** A limit that differs from the standing rule's, such as by local code. */
public final class LimitPart extends Part {

    private final RuleLimit limit;

    LimitPart(RuleLimit limit) {
        this.limit = limit;
    }

    @Override
    void addTo(YardDraft draft) {
        draft.limit(limit);
    }
}
