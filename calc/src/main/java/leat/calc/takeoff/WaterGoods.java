package leat.calc.takeoff;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.catalog.Device;
import leat.model.catalog.HeadShape;
import leat.model.catalog.MaterialKind;
import leat.model.finding.Subject;
import leat.model.geometry.Sector;
import leat.model.id.PipeId;
import leat.model.id.ValveId;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Length;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;
import leat.model.site.Phase;
import leat.model.water.BackflowPreventer;
import leat.model.water.DripLine;
import leat.model.water.Head;
import leat.model.water.HoseBib;
import leat.model.water.Manifold;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;
import leat.model.water.ZoneValve;

/** Heads, valves and their manifolds, boxes, hose bibs and backflow preventers. The meter is the supplier's. */
final class WaterGoods {

    private final Site site;
    private final WaterSystem water;
    private final Goods goods;
    private final Depths depths;
    private final Materials materials;
    private final SortedMap<PipeId, PipeRun> pipes = new TreeMap<>();
    private final SortedMap<ValveId, PipeRun> behindValve = new TreeMap<>();

    WaterGoods(Site site, TakeoffParameters parameters, Goods goods, Materials materials) {
        this.site = site;
        water = site.yard().water();
        this.goods = goods;
        depths = new Depths(site, parameters);
        this.materials = materials;
        water.pipes().forEach(run -> {
            pipes.put(run.id(), run);
            if (run.from() instanceof ValveId valve) {
                behindValve.putIfAbsent(valve, run);
            }
        });
    }

    void count() {
        water.heads().forEach(this::head);
        water.manifolds().forEach(this::manifold);
        water.bibs().forEach(this::bib);
        water.backflows().forEach(this::backflow);
        water.pipes().filter(run -> !run.existing()).forEach(this::fitted);
    }

    private void head(Head head) {
        Phase phase = water.zoneOf(head.id()).map(Zone::phase).orElse(Phase.NOW);
        HeadShape shape = site.catalog().head(head.family()).shape();
        String text = shape.label() + ", family " + head.family();
        Subject subject = Subject.of(head.id());
        if (head instanceof DripLine line) {
            materials.add(
                    phase,
                    MaterialKind.HEAD,
                    "drip line " + head.family(),
                    text,
                    new MaterialUse(subject, "along its path", new Length(depths.slopeLengthM(line.path()))));
            one(phase, MaterialKind.FITTING, "drip connection", "connection of a drip line to its riser", subject);
            one(phase, MaterialKind.FITTING, "drip end cap", "flush cap at the end of a drip line", subject);
            return;
        }
        materials.count(phase, MaterialKind.HEAD, "head " + head.family(), text, 1, subject, setting(head));
        if (shape == HeadShape.BUBBLER) {
            one(phase, MaterialKind.FITTING, "flexible riser", "flexible riser under a bubbler", subject);
        } else {
            one(phase, MaterialKind.FITTING, "swing joint", "swing joint under a head", subject);
        }
    }

    private String setting(Head head) {
        Optional<Sector> sector = head.sector();
        return sector.map(one -> "set to "
                        + show(one.radius())
                        + (one.arc().isFull()
                                ? ", full circle"
                                : ", " + show(one.arc().sweep())))
                .orElse("at one spot");
    }

    private String show(Quantity quantity) {
        Yard yard = site.yard();
        UnitSystem units = yard.units();
        return Units.show(quantity, units);
    }

    private void one(Phase phase, MaterialKind kind, String key, String text, Subject subject) {
        materials.count(phase, kind, key, text, 1, subject, "one");
    }

    /** Inlet, then a tee to each valve but the last, which stands on an elbow. */
    private void manifold(Manifold manifold) {
        List<ZoneValve> valves = manifold.valves();
        Subject subject = Subject.of(manifold.id());
        for (ValveBoxes box : ValveBoxes.holding(valves.size())) {
            String why = "for " + valves.size() + (valves.size() == 1 ? " valve" : " valves");
            materials.count(Phase.NOW, MaterialKind.BOX, box.key(), box.text(), 1, subject, why);
        }
        Optional<PipeRun> feed = manifold.on().map(pipes::get);
        if (feed.isPresent() && !valves.isEmpty()) {
            fitting(Phase.NOW, "tee", feed.get(), valves.size() - 1, subject, "to its valves");
            fitting(Phase.NOW, "elbow 90", feed.get(), 1, subject, "to its last valve");
        }
        valves.forEach(valve -> valve(valve, feed));
    }

    private void valve(ZoneValve valve, Optional<PipeRun> feed) {
        Device device = site.catalog().device(valve.device());
        Subject subject = Subject.of(valve.id());
        Phase phase = valve.spare() ? Phase.NOW : phase(valve);
        one(phase, MaterialKind.VALVE, key(device), device.title(), subject);
        feed.ifPresent(run -> connect(phase, run, device, subject, "inlet"));
        PipeRun behind = behindValve.get(valve.id());
        if (behind != null) {
            connect(phase, behind, device, subject, "outlet");
        } else {
            feed.ifPresent(run -> {
                connect(phase, run, device, subject, "outlet");
                fitting(phase, "cap", run, 1, subject, "nothing behind it yet");
            });
        }
    }

    private Phase phase(ZoneValve valve) {
        return water.zones().stream()
                .filter(zone -> zone.valve().equals(valve.id()))
                .findFirst()
                .map(Zone::phase)
                .orElse(Phase.NOW);
    }

    /** From the valve's thread to the pipe; one fitting, also where their sizes differ. */
    private void connect(Phase phase, PipeRun run, Device device, Subject subject, String why) {
        boolean isSame = run.size().map(one -> one.equals(size(device))).orElse(true);
        String sizes = isSame ? goods.size(run) : goods.size(run) + " x " + size(device);
        String key = "thread adapter " + sizes + " " + goods.material(run);
        materials.count(phase, MaterialKind.FITTING, key, key, 1, subject, why);
    }

    private void fitting(Phase phase, String kind, PipeRun run, int count, Subject subject, String why) {
        String key = goods.fitting(kind, run);
        materials.count(phase, MaterialKind.FITTING, key, key, count, subject, why);
    }

    private void bib(HoseBib bib) {
        Subject subject = Subject.of(bib.id());
        one(bib.phase(), MaterialKind.BIB, "hose bib", "hose bib", subject);
        if (bib.vacuumBreaker()) {
            one(bib.phase(), MaterialKind.BIB, "hose vacuum breaker", "vacuum breaker for a hose bib", subject);
        }
        bib.on()
                .map(pipes::get)
                .ifPresent(run -> fitting(bib.phase(), "thread adapter", run, 1, subject, "under the bib"));
    }

    private void backflow(BackflowPreventer backflow) {
        PipeRun on = pipes.get(backflow.on());
        if (on != null && !on.existing()) {
            Device device = site.catalog().device(backflow.device());
            one(on.phase(), MaterialKind.BACKFLOW, key(device), device.title(), Subject.of(backflow.id()));
        }
    }

    private void fitted(PipeRun run) {
        for (String key : run.fitted()) {
            Device device = site.catalog().device(key);
            Subject subject = Subject.of(run.id());
            one(run.phase(), MaterialKind.VALVE, key(device), device.title(), subject);
            connect(
                    run.phase(),
                    run,
                    device,
                    subject,
                    "inlet of " + device.kind().label());
            connect(
                    run.phase(),
                    run,
                    device,
                    subject,
                    "outlet of " + device.kind().label());
        }
    }

    private static String key(Device device) {
        return device.kind().label() + " " + size(device);
    }

    private static String size(Device device) {
        return device.size().endsWith("in") ? device.size() : device.size() + " in";
    }
}
