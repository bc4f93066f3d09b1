package leat.calc.wiring;

import java.util.ArrayList;
import java.util.List;
import leat.calc.internal.routes.Trenchwork;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.plan.Yard;
import leat.model.power.Cable;
import leat.model.power.Conduit;

/** What lies in the trenches that are to be dug, apart from what the stage lays. */
final class TrenchWorks {

    private TrenchWorks() {}

    /** Given trenches; new pipes, conduits and bare cables that were not stated to lie in one. */
    static Trenchwork of(Yard yard, GivenWiring given, Buildings buildings) {
        var work = new Trenchwork();
        given.trenches().forEach(work::addReady);
        yard.water()
                .pipes()
                .filter(run -> !run.existing())
                .forEach(run -> work.addSnapped(run.id(), run.route().points()));
        for (Conduit conduit : given.conduits()) {
            if (!conduit.existing()) {
                outdoors(conduit.route(), buildings).forEach(route -> work.addSnapped(conduit.id(), route));
            }
        }
        List<Cable> cables = new ArrayList<>(given.powerCables());
        cables.addAll(given.valveCables());
        for (Cable cable : cables) {
            if (!cable.existing() && cable.conduits().isEmpty()) {
                outdoors(cable.route(), buildings).forEach(route -> work.addSnapped(cable.id(), route));
            }
        }
        work.settle();
        return work;
    }

    private static List<List<Point>> outdoors(Polyline route, Buildings buildings) {
        List<List<Point>> parts = new ArrayList<>();
        List<Point> part = new ArrayList<>();
        for (int i = 1; i < route.points().size(); i++) {
            for (Buildings.Stretch one :
                    buildings.split(route.points().get(i - 1), route.points().get(i))) {
                if (!one.indoors()) {
                    if (part.isEmpty()) {
                        part.add(one.from());
                    }
                    part.add(one.to());
                } else if (!part.isEmpty()) {
                    parts.add(List.copyOf(part));
                    part.clear();
                }
            }
        }
        if (!part.isEmpty()) {
            parts.add(part);
        }
        return parts;
    }
}
