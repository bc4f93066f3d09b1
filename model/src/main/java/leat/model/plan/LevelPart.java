package leat.model.plan;

import leat.model.quantity.Length;
import leat.model.site.SpotLevel;

/** A height of the ground. */
public final class LevelPart extends Part {

    private final Place at;
    private final Length level;
    private final boolean finished;

    LevelPart(Place at, Length level, boolean finished) {
        this.at = at;
        this.level = level;
        this.finished = finished;
    }

    @Override
    void addTo(YardDraft draft) {
        draft.level(new SpotLevel(at.in(draft.units()), level), finished);
    }
}
