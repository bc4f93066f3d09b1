package leat.calc.phasing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.id.ValveId;
import leat.model.plan.Yard;
import leat.model.power.Cable;
import leat.model.power.Conduit;
import leat.model.water.HoseBib;
import leat.model.water.Manifold;
import leat.model.water.PipeRun;
import leat.model.water.Zone;
import leat.model.water.ZoneValve;

/** Where that which is laid now ends until what comes later goes on from there. */
final class EarlyEnds {

    private final Yard yard;
    private final LaterThings later;
    private final List<EarlyEnd> ends = new ArrayList<>();

    private EarlyEnds(Yard yard, LaterThings later) {
        this.yard = yard;
        this.later = later;
    }

    static List<EarlyEnd> of(Yard yard, LaterThings later) {
        var early = new EarlyEnds(yard, later);
        early.addPipes();
        early.addValves();
        yard.power().cables().forEach(early::addCable);
        yard.power().conduits().forEach(early::addConduit);
        early.ends.sort(Comparator.comparing(EarlyEnd::id).thenComparing(EarlyEnd::waitsFor));
        return List.copyOf(early.ends);
    }

    /** @param id what ends: one of later does not end early, and to one that is there already nothing is done now */
    private void add(Id id, EarlyEndKind kind, Id waitsFor, Point at) {
        if (!later.has(id) && !later.isThere(id) && later.has(waitsFor)) {
            ends.add(new EarlyEnd(id, kind, waitsFor, at));
        }
    }

    private void addPipes() {
        for (PipeRun run : yard.water().pipes().toList()) {
            if (run.from() instanceof PipeId from) {
                add(from, EarlyEndKind.PIPE, run.id(), run.route().start());
            }
        }
        for (HoseBib bib : yard.water().bibs()) {
            bib.on().ifPresent(on -> add(on, EarlyEndKind.PIPE, bib.id(), bib.at()));
        }
        yard.water()
                .laterals()
                .forEach(lateral -> lateral.heads()
                        .forEach((head, pipe) -> yard.water()
                                .pipe(pipe)
                                .ifPresent(run -> add(
                                        pipe,
                                        EarlyEndKind.PIPE,
                                        head,
                                        run.route().end()))));
    }

    /** Valves stand in their manifold from the beginning; the pipe of a later zone leaves one that is plugged. */
    private void addValves() {
        for (Manifold manifold : yard.water().manifolds()) {
            for (ZoneValve valve : manifold.valves()) {
                yard.water().zones().stream()
                        .filter(zone -> zone.valve().equals(valve.id()))
                        .filter(zone -> !hasPipeOfNow(valve.id()))
                        .map(Zone::id)
                        .forEach(zone -> add(valve.id(), EarlyEndKind.VALVE, zone, manifold.at()));
            }
        }
    }

    private boolean hasPipeOfNow(ValveId valve) {
        return yard.water().pipes().anyMatch(run -> run.from().equals(valve) && !later.has(run.id()));
    }

    private void addCable(Cable cable) {
        add(cable.id(), EarlyEndKind.WIRES, cable.to(), cable.route().end());
    }

    /** A conduit that only wires of later will pass, whatever lies in it now apart. */
    private void addConduit(Conduit conduit) {
        List<Cable> cables = yard.power().cablesIn(conduit.id());
        boolean inUse = cables.stream().anyMatch(cable -> !later.has(cable.id()));
        if (!inUse) {
            cables.stream()
                    .findFirst()
                    .ifPresent(cable -> add(
                            conduit.id(),
                            EarlyEndKind.CONDUIT,
                            cable.id(),
                            conduit.route().end()));
        }
    }
}
