package leat.calc.takeoff;

import java.util.List;
import java.util.Optional;
import leat.model.geometry.Point;
import leat.model.power.Conduit;
import leat.model.power.PowerSystem;

/** How each conduit ends: at a thing that is wired, or where it goes on as another. */
final class ConduitEnds {

    enum Kind {
        /** It comes up to a box. */
        RISES,
        /** It goes on as one other. */
        JOINED,
        /** Three or more meet in a box in the ground. */
        BOXED
    }

    private static final double ONE_PLACE_M = 0.05;

    /** A conduit that ends so near to the end of a cable leads up to what the cable is for. */
    private static final double AT_A_THING_M = 0.3;

    private final PowerSystem power;

    ConduitEnds(PowerSystem power) {
        this.power = power;
    }

    Kind at(Conduit conduit, Point end) {
        List<Conduit> others = others(conduit, end);
        if (others.isEmpty() || isAtThing(end)) {
            return Kind.RISES;
        }
        return others.size() == 1 ? Kind.JOINED : Kind.BOXED;
    }

    /** The other one where two are joined. */
    Optional<Conduit> joinedTo(Conduit conduit, Point end) {
        return at(conduit, end) == Kind.JOINED ? others(conduit, end).stream().findFirst() : Optional.empty();
    }

    /** Whether the fitting or the box there is counted with this conduit: with the first of the new ones. */
    boolean counts(Conduit conduit, Point end) {
        return others(conduit, end).stream()
                .allMatch(other -> other.existing() || conduit.id().compareTo(other.id()) < 0);
    }

    private List<Conduit> others(Conduit conduit, Point end) {
        return power.conduits().stream()
                .filter(other -> !other.id().equals(conduit.id()))
                .filter(other -> isNear(other.route().start(), end, ONE_PLACE_M)
                        || isNear(other.route().end(), end, ONE_PLACE_M))
                .toList();
    }

    private boolean isAtThing(Point end) {
        return power.cables()
                .anyMatch(cable -> isNear(cable.route().start(), end, AT_A_THING_M)
                        || isNear(cable.route().end(), end, AT_A_THING_M));
    }

    private static boolean isNear(Point one, Point other, double withinM) {
        return one.distanceM(other) <= withinM;
    }
}
