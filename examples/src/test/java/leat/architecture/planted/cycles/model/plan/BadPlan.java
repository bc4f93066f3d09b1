package leat.architecture.planted.cycles.model.plan;

import java.util.List;
import leat.architecture.planted.cycles.model.water.BadHead;

public record BadPlan(List<BadHead> heads) {

    public static BadPlan of(BadHead head) {
        return new BadPlan(List.of(head));
    }
}
