package leat.calc.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.takeoff.PipeWalk.Stretch;
import leat.model.catalog.Device;
import leat.model.catalog.DeviceKind;
import leat.model.catalog.MaterialKind;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.id.PipeId;
import leat.model.id.ValveId;
import leat.model.plan.Site;
import leat.model.quantity.Length;
import leat.model.site.Phase;
import leat.model.water.BackflowPreventer;
import leat.model.water.DripLine;
import leat.model.water.HoseBib;
import leat.model.water.Lateral;
import leat.model.water.Manifold;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;

/** New pipes: their lengths with the slope of the ground and all that goes up and down, in pieces between fittings. */
final class PipeGoods {

    /** Less than this is lost in a fitting. */
    private static final double LEAST_RISER_M = 0.01;

    private final Site site;
    private final WaterSystem water;
    private final TakeoffParameters parameters;
    private final Goods goods;
    private final Depths depths;
    private final PipeWalk walk;
    private final Materials materials;
    private final Cuts cuts;
    private final SortedMap<PipeId, PipeRun> byId = new TreeMap<>();

    PipeGoods(Site site, TakeoffParameters parameters, Goods goods, PipeWalk walk, Materials materials, Cuts cuts) {
        this.site = site;
        water = site.yard().water();
        this.parameters = parameters;
        this.goods = goods;
        depths = new Depths(site, parameters);
        this.walk = walk;
        this.materials = materials;
        this.cuts = cuts;
        walk.runs().forEach(run -> byId.put(run.id(), run));
    }

    void count() {
        walk.joints().forEach(joint -> new JointFittings(joint, goods, parameters, materials).count());
        walk.runs().stream().filter(run -> !run.existing()).forEach(this::pipe);
        water.bibs().forEach(this::bibRiser);
        water.manifolds().forEach(this::manifoldRiser);
        water.backflows().forEach(this::backflowRisers);
        water.laterals().forEach(this::dripRisers);
    }

    private void pipe(PipeRun run) {
        startRiser(run);
        double pieceM = 0;
        for (Stretch stretch : walk.stretches(run)) {
            pieceM += depths.slopeLengthM(stretch.from().at(), stretch.to().at());
            if (!new JointFittings(stretch.to(), goods, parameters, materials).isUncut()) {
                piece(run, run.phase(), pieceM, "between fittings");
                pieceM = 0;
            }
        }
        if (pieceM > 0) {
            piece(run, run.phase(), pieceM, "between fittings");
        }
    }

    /** From the depth of what feeds the run to its own. */
    private void startRiser(PipeRun run) {
        Point start = run.route().start();
        double ownM = depths.depthM(run, start);
        if (run.from() instanceof ValveId) {
            riser(run, Math.abs(ownM - parameters.valveDepth().metres()), "down from its valve");
        } else if (run.from() instanceof PipeId id && byId.containsKey(id)) {
            PipeRun upstream = byId.get(id);
            riser(run, Math.abs(ownM - depths.depthM(upstream, start)), "to the depth of pipe " + id);
        }
    }

    private void bibRiser(HoseBib bib) {
        bib.on().map(byId::get).ifPresent(run -> {
            Point leaves = run.route().nearest(bib.at());
            String why = "hose bib " + bib.id();
            double upM = depths.depthM(run, leaves) + parameters.bibHeight().metres();
            riser(run, bib.phase(), depths.slopeLengthM(leaves, bib.at()), "to " + why);
            riser(run, bib.phase(), upM, "riser of " + why);
        });
    }

    private void manifoldRiser(Manifold manifold) {
        manifold.on().map(byId::get).ifPresent(run -> {
            Point leaves = run.route().nearest(manifold.at());
            String why = "manifold " + manifold.id();
            riser(run, depths.slopeLengthM(leaves, manifold.at()), "to " + why);
            double upM = depths.depthM(run, leaves) - parameters.valveDepth().metres();
            riser(run, Math.abs(upM), "riser of " + why);
            double alongM =
                    (manifold.valves().size() - 1) * parameters.valveSpace().metres();
            riser(run, alongM, "between the valves of " + why);
        });
    }

    /** A drip line lies at the surface; heads stand on swing joints that reach up by themselves. */
    private void dripRisers(Lateral lateral) {
        lateral.heads().forEach((head, pipe) -> {
            PipeRun run = byId.get(pipe);
            if (run != null && water.head(head).orElseThrow() instanceof DripLine line) {
                riser(run, depths.depthM(run, line.at()), "up to drip line " + head);
            }
        });
    }

    /** Up to the assembly and down again, with an elbow at each foot and at the top of each riser that has none. */
    private void backflowRisers(BackflowPreventer backflow) {
        PipeRun run = byId.get(backflow.on());
        if (run == null || run.existing()) {
            return;
        }
        Device device = site.catalog().device(backflow.device());
        double upM = depths.depthM(run, run.route().start()) + backflow.height().metres();
        riser(run, upM, "up to backflow preventer " + backflow.id());
        riser(run, upM, "down from backflow preventer " + backflow.id());
        boolean turnsItself = device.kind() == DeviceKind.PRESSURE_VACUUM_BREAKER
                || device.kind() == DeviceKind.ATMOSPHERIC_VACUUM_BREAKER;
        fitting(run, "elbow 90", turnsItself ? 3 : 4, backflow);
        fitting(run, "thread adapter", 2, backflow);
    }

    private void fitting(PipeRun run, String kind, int count, BackflowPreventer backflow) {
        String key = goods.fitting(kind, run);
        materials.count(
                run.phase(),
                MaterialKind.FITTING,
                key,
                key,
                count,
                Subject.of(backflow.id()),
                "risers and connections");
    }

    private void riser(PipeRun run, double lengthM, String why) {
        riser(run, run.phase(), lengthM, why);
    }

    private void riser(PipeRun run, Phase phase, double lengthM, String why) {
        if (lengthM >= LEAST_RISER_M) {
            piece(run, phase, lengthM, why);
        }
    }

    /** A piece longer than the stock is joined from whole lengths and a rest. */
    private void piece(PipeRun run, Phase phase, double lengthM, String why) {
        String key = goods.pipe(run);
        materials.add(
                phase, MaterialKind.PIPE, key, key, new MaterialUse(Subject.of(run.id()), why, new Length(lengthM)));
        if (run.tradeSize().isEmpty()) {
            return;
        }
        double stockM = site.catalog().pipe(run.tradeSize().get()).stock().metres();
        List<CutPiece> pieces = new ArrayList<>(Cuts.split(run.id(), lengthM, stockM));
        cuts.add(phase, MaterialKind.PIPE, key, stockM, pieces);
        String coupling = goods.fitting("coupling", run);
        materials.count(
                phase,
                MaterialKind.FITTING,
                coupling,
                coupling,
                pieces.size() - 1,
                Subject.of(run.id()),
                "lengths of stock joined");
    }
}
