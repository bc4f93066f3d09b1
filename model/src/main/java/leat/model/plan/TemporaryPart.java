package leat.model.plan;

/** How something of now does for a while without what comes later. */
public final class TemporaryPart extends Part {

    private final Temporary temporary;

    TemporaryPart(Temporary temporary) {
        this.temporary = temporary;
    }

    @Override
    void addTo(YardDraft draft) {
        draft.temporary(temporary);
    }
}
