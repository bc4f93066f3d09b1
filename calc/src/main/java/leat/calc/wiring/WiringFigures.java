package leat.calc.wiring;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.Progress;
import leat.model.catalog.ElectricalTables;
import leat.model.finding.Rule;
import leat.model.finding.Status;
import leat.model.finding.Subject;
import leat.model.id.CircuitId;
import leat.model.id.LaidId;
import leat.model.plan.Site;
import leat.model.power.Cable;
import leat.model.power.Circuit;
import leat.model.power.Conduit;
import leat.model.power.Load;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.power.ValveCable;
import leat.model.quantity.Angle;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.Voltage;
import leat.model.trench.TrenchSegment;

/** One run of the review: all figures of a site, and what does not keep the rules. */
final class WiringFigures {

    private final Site site;
    private final PowerSystem power;
    private final ElectricalCode code;
    private final ElectricalTables tables;
    private final ConduitContents contents;
    private final SortedMap<CircuitId, CircuitReview> circuits = new TreeMap<>();

    WiringFigures(Site site) {
        this.site = site;
        power = site.yard().power();
        code = ElectricalCode.of(site);
        tables = site.catalog().electrical();
        contents = new ConduitContents(code, power);
        for (Circuit circuit : power.circuits()) {
            circuits.put(circuit.id(), new CircuitReview(code, power, contents, circuit));
        }
    }

    ElectricalCode code() {
        return code;
    }

    ConduitContents contents() {
        return contents;
    }

    CircuitReview circuit(CircuitId id) {
        CircuitReview review = circuits.get(id);
        if (review == null) {
            throw new AssertionError(id + " is named but not there");
        }
        return review;
    }

    WiringResult look(Progress progress) {
        var looks = new Looks(site.rules());
        progress.at(0, "wiring");
        new LayoutReview(site.yard(), code, looks)
                .look(circuits.values().stream().map(CircuitReview::tree).toList());
        circuits.values().forEach(one -> one.look(looks));
        circuits.values().forEach(one -> lookAtTotal(one, looks));
        transformers().look(looks);
        power.cables().forEach(cable -> look(cable, looks));
        power.conduits().forEach(conduit -> look(conduit, looks));
        SortedMap<LaidId, Length> covers = lookAtCovers(looks);
        return new WiringResult(
                Status.COMPLETE,
                circuits.values().stream().map(CircuitReview::figures).toList(),
                power.cables().map(this::figures).toList(),
                power.loads().flatMap(load -> figures(load).stream()).toList(),
                power.conduits().stream().map(this::figures).toList(),
                power.transformers().stream().map(transformers()::figures).toList(),
                covers,
                looks.findings());
    }

    TransformerReview transformers() {
        return new TransformerReview(site.yard(), code, List.copyOf(circuits.values()));
    }

    private void lookAtTotal(CircuitReview branch, Looks looks) {
        branch.feedBefore()
                .ifPresent(feed -> feed.circuit()
                        .map(this::circuit)
                        .flatMap(feeder -> feeder.drops().lost(feed.id()).map(feeder::share))
                        .ifPresent(share -> branch.lookAtTotal(share, looks)));
    }

    CableFigures figures(Cable cable) {
        if (cable instanceof PowerCable one) {
            return circuit(one.circuit()).figures(one);
        }
        return new CableFigures(
                cable.id(),
                cable.route().length(),
                Optional.of(tables.valveSupply().inrush()),
                cable.conductor().map(size -> code.conductor(size).label()),
                Optional.empty(),
                Optional.empty(),
                valveDrop((ValveCable) cable).map(Answer::value));
    }

    Optional<Answer<Voltage>> valveDrop(ValveCable cable) {
        return cable.conductor().map(size -> ValveDrop.of(code, tables.valveSupply(), cable, code.conductor(size)));
    }

    private Optional<LoadFigures> figures(Load load) {
        return load.circuit().map(id -> circuit(id).figures(load));
    }

    ConduitFigures figures(Conduit conduit) {
        int count = contents.of(conduit).map(ConduitContents::count).orElse(0);
        Rule most = code.fillLimit(Math.max(1, count));
        return new ConduitFigures(
                conduit.id(),
                Count.of(count),
                fill(conduit).map(Answer::value),
                Ratio.of(most.limit().si()),
                Angle.degrees(Pulls.bendsDegrees(conduit.route().points(), conduit.series())));
    }

    /** Empty while the size of the conduit or of a cable in it is not known. */
    Optional<Answer<Ratio>> fill(Conduit conduit) {
        return conduit.size()
                .map(size -> tables.conduit(conduit.series(), size))
                .flatMap(spec -> contents.of(conduit).map(all -> code.fill(spec, all)));
    }

    private void look(Cable cable, Looks looks) {
        if (cable.conductor().isEmpty() && !cable.existing()) {
            looks.note(looks.rule("power.size"), Subject.of(cable.id(), "conductor"), UNSIZED);
        }
        if (cable instanceof ValveCable one) {
            valveDrop(one)
                    .ifPresent(lost -> looks.hold(
                            code.controlDropLimit(),
                            Subject.of(cable.id(), "conductor"),
                            lost.value(),
                            "take thicker valve wires, or a controller nearer to the valves"));
        }
    }

    private static final String UNSIZED = "state a size, or let sizes be planned";

    private void look(Conduit conduit, Looks looks) {
        ConduitFigures figures = figures(conduit);
        figures.fill()
                .filter(share -> figures.wires().value() > 0)
                .ifPresent(share -> looks.hold(
                        code.fillLimit((int) figures.wires().value()),
                        Subject.of(conduit.id()),
                        share,
                        "choose a larger conduit, or lead some of its wires another way"));
        boolean used = !power.cablesIn(conduit.id()).isEmpty();
        if (conduit.size().isEmpty() && used && !conduit.existing()) {
            looks.note(looks.rule("power.size"), Subject.of(conduit.id(), "size"), UNSIZED);
        }
    }

    /** In each trench the thing is named that wants most more than it has. */
    private SortedMap<LaidId, Length> lookAtCovers(Looks looks) {
        SortedMap<LaidId, Length> covers = new TreeMap<>();
        var wanted = new WireCovers(site, power);
        for (TrenchSegment trench : site.yard().trenches()) {
            Rule worst = null;
            Length worstCover = Length.ZERO;
            for (LaidId laid : trench.contents()) {
                Optional<Rule> rule = wanted.rule(laid, trench.route().points());
                if (rule.isEmpty()) {
                    continue;
                }
                var least = new Length(rule.get().limit().si());
                covers.merge(laid, least, (one, other) -> one.compareTo(other) >= 0 ? one : other);
                Length cover = trench.depth().minus(wanted.outside(laid));
                if (worst == null || lackM(rule.get(), cover) > lackM(worst, worstCover)) {
                    worst = rule.get();
                    worstCover = cover;
                }
            }
            if (worst != null) {
                looks.hold(worst, Subject.of(trench.id(), "depth"), worstCover, "dig deeper there");
            }
        }
        return covers;
    }

    private static double lackM(Rule rule, Length cover) {
        return rule.limit().si() - cover.metres();
    }
}
