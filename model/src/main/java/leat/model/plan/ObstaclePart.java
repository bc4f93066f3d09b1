package leat.model.plan;

import java.util.function.Function;
import leat.model.quantity.UnitSystem;
import leat.model.site.Obstacle;

/** A wall, a boulder or a tree. */
public final class ObstaclePart extends Part {

    private final Function<UnitSystem, Obstacle> maker;

    ObstaclePart(Function<UnitSystem, Obstacle> maker) {
        this.maker = maker;
    }

    @Override
    void addTo(YardDraft draft) {
        draft.obstacle(maker.apply(draft.units()));
    }
}
