package leat.model.plan;

import leat.model.power.CodeFamily;

/** Which family of electrical codes the yard is planned by. */
public final class CodePart extends Part {

    private final CodeFamily family;

    CodePart(CodeFamily family) {
        this.family = family;
    }

    @Override
    void addTo(YardDraft draft) {
        draft.power().code(family);
    }
}
