package leat.calc.digging;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.model.catalog.CableSpec;
import leat.model.catalog.ElectricalTables;
import leat.model.id.CableId;
import leat.model.id.ConduitId;
import leat.model.id.LaidId;
import leat.model.id.PipeId;
import leat.model.plan.Site;
import leat.model.power.Cable;
import leat.model.power.Circuit;
import leat.model.power.CodeFamily;
import leat.model.power.Conduit;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.power.ValveCable;
import leat.model.quantity.Length;
import leat.model.site.Phase;
import leat.model.trench.TrenchSegment;
import leat.model.water.PipeRun;

/** Looks up what lies in trenches: how thick it is, and how deep it must lie. */
final class LaidThings {

    /** A conduit or a cable whose size is still open counts as so thick; common practice, no source. */
    private static final double OPEN_CONDUIT_M = 0.027;

    private static final double OPEN_CABLE_M = 0.012;

    private final Site site;
    private final DiggingParameters parameters;
    private final PowerSystem power;
    private final SortedSet<PipeId> main = new TreeSet<>();

    LaidThings(Site site, DiggingParameters parameters) {
        this.site = site;
        this.parameters = parameters;
        this.power = site.yard().power();
        site.yard().water().main().runs().forEach(run -> main.add(run.id()));
    }

    List<Laid> in(TrenchSegment trench) {
        return trench.contents().stream().map(this::look).toList();
    }

    private Laid look(LaidId id) {
        if (id instanceof PipeId pipe) {
            return pipe(pipe);
        }
        if (id instanceof ConduitId conduit) {
            List<Cable> cables = power.cablesIn(conduit);
            // What a spare conduit will carry nobody knows: it lies as one for power.
            boolean isPower = cables.isEmpty() || cables.stream().anyMatch(power::isFromPanel);
            Phase phase = power.conduit(conduit).map(Conduit::phase).orElse(Phase.NOW);
            double outsideM = power.conduit(conduit).flatMap(this::outside).orElse(OPEN_CONDUIT_M);
            return laid(id, isPower, phase, outsideM, "digging.cover.conduit");
        }
        if (id instanceof CableId cable) {
            Optional<Cable> found = power.cable(cable);
            boolean isPower = found.filter(power::isFromPanel).isPresent();
            Phase phase = found.map(Cable::phase).orElse(Phase.NOW);
            double outsideM = found.flatMap(this::outside).orElse(OPEN_CABLE_M);
            return laid(id, isPower, phase, outsideM, "digging.cover.cable");
        }
        throw new AssertionError(id);
    }

    private Laid pipe(PipeId id) {
        boolean isMain = main.contains(id);
        Optional<PipeRun> run = site.yard().water().pipe(id);
        double outsideM = run.flatMap(PipeRun::tradeSize)
                .map(size -> site.catalog().pipe(size).outside().metres())
                .orElse(0.0);
        return new Laid(
                id,
                isMain ? LaidKind.MAIN : LaidKind.LATERAL,
                run.map(PipeRun::phase).orElse(Phase.NOW),
                outsideM,
                ruleM(isMain ? "trench.cover.main" : "trench.cover.lateral"));
    }

    private Optional<Double> outside(Conduit conduit) {
        return conduit.size()
                .map(size -> site.catalog().electrical().conduit(conduit.series(), size))
                .map(spec -> spec.outside().orElse(spec.bore()).metres());
    }

    /** Of the circle that a cable with those conductors takes up; empty where none is made. */
    private Optional<Double> outside(Cable cable) {
        CodeFamily family = site.yard().codeFamily();
        ElectricalTables tables = site.catalog().electrical();
        Optional<CableSpec> spec = cable.conductor()
                .flatMap(size -> cable instanceof ValveCable valves
                        ? tables.controlCable(family, size, valves.strands())
                        : circuit(cable)
                                .flatMap(one -> one.isLowVoltage()
                                        ? tables.lampCable(family, size)
                                        : tables.powerCable(family, size, one.liveWires())));
        return spec.map(one -> Math.sqrt(4 * one.fill().squareMetres() / Math.PI));
    }

    private Optional<Circuit> circuit(Cable cable) {
        return cable instanceof PowerCable one ? power.circuit(one.circuit()) : Optional.empty();
    }

    private Laid laid(LaidId id, boolean isPower, Phase phase, double outsideM, String rule) {
        double ownM = Optional.ofNullable(parameters.covers().get(id))
                .map(Length::metres)
                .orElse(ruleM(isPower ? rule : "digging.cover.control"));
        return new Laid(id, isPower ? LaidKind.POWER : LaidKind.CONTROL, phase, outsideM, ownM);
    }

    private double ruleM(String rule) {
        return site.rules().get(rule).limit().si();
    }
}
