package leat.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.model.id.BackflowId;
import leat.model.id.BibId;
import leat.model.id.HeadId;
import leat.model.id.ManifoldId;
import leat.model.id.PipeId;
import leat.model.id.SourceId;
import leat.model.id.UpstreamId;
import leat.model.id.ValveId;
import leat.model.id.ZoneId;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;
import leat.model.site.Phase;
import leat.model.water.BackflowPreventer;
import leat.model.water.Bubbler;
import leat.model.water.DripLine;
import leat.model.water.FlowTest;
import leat.model.water.Head;
import leat.model.water.HoseBib;
import leat.model.water.Lateral;
import leat.model.water.Main;
import leat.model.water.Mains;
import leat.model.water.Manifold;
import leat.model.water.PipeRun;
import leat.model.water.Pump;
import leat.model.water.Rotor;
import leat.model.water.Source;
import leat.model.water.Spray;
import leat.model.water.Tank;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;
import leat.model.water.ZoneValve;

/** Water systems of all kinds of part, finished or not, in which every name that is used exists. */
final class RandomWater {

    private final RandomYards random;

    RandomWater(RandomYards random) {
        this.random = random;
    }

    WaterSystem system() {
        List<Source> sources = List.of(mains(), pump(), tank());
        List<PipeId> mainIds = random.list(i -> new PipeId(random.name()));
        Main main = new Main(runs(mainIds, random.one(sources).id()));
        List<Manifold> manifolds = random.list(i ->
                new Manifold(new ManifoldId(random.name()), random.point(), any(mainIds), random.list(j -> valve())));
        List<Head> heads = new ArrayList<>(random.list(i -> head()));
        List<Zone> zones = new ArrayList<>();
        List<Lateral> laterals = new ArrayList<>();
        for (Manifold manifold : manifolds) {
            for (ZoneValve valve : manifold.valves()) {
                if (!valve.spare()) {
                    List<Head> own = random.list(i -> head());
                    heads.addAll(own);
                    Zone zone = new Zone(
                            new ZoneId(random.name()),
                            valve.id(),
                            own.stream().map(Head::id).toList(),
                            random.any(Phase.class));
                    zones.add(zone);
                    random.maybe(() -> laterals.add(lateral(zone)));
                }
            }
        }
        return new WaterSystem(
                sources,
                mainIds.isEmpty() ? List.of() : random.list(i -> backflow(random.one(mainIds))),
                main,
                manifolds,
                heads,
                zones,
                laterals,
                random.list(i -> bib(mainIds)));
    }

    private Optional<PipeId> any(List<PipeId> ids) {
        return ids.isEmpty() ? Optional.empty() : random.maybe(() -> random.one(ids));
    }

    private Mains mains() {
        Pressure pressure = random.pressure();
        Optional<FlowTest> test = random.maybe(() -> new FlowTest(random.flow(), pressure.times(0.7)));
        return new Mains(new SourceId(random.name()), random.point(), pressure, test, random.maybe(random::name));
    }

    private Pump pump() {
        Pressure pressure = random.pressure();
        return new Pump(
                new SourceId(random.name()),
                random.point(),
                pressure,
                random.flow(),
                pressure.times(0.6),
                random.coin() ? Length.ZERO : random.length(),
                random.maybe(random::name));
    }

    private Tank tank() {
        return new Tank(new SourceId(random.name()), random.point(), random.length(), random.maybe(random::name));
    }

    /** A tree: each run is fed by the first or by one before it. */
    private List<PipeRun> runs(List<PipeId> ids, UpstreamId first) {
        List<PipeRun> runs = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            UpstreamId from = i == 0 || random.coin() ? first : random.one(ids.subList(0, i));
            runs.add(new PipeRun(
                    ids.get(i),
                    from,
                    random.route(),
                    random.name(),
                    random.maybe(() -> "3/4 in"),
                    random.list(j -> random.name()),
                    random.coin(),
                    random.any(Phase.class)));
        }
        return runs;
    }

    private ZoneValve valve() {
        return new ZoneValve(new ValveId(random.name()), random.name(), random.coin());
    }

    private BackflowPreventer backflow(PipeId on) {
        Length height = random.coin() ? random.length() : Length.ZERO.minus(random.length());
        return new BackflowPreventer(new BackflowId(random.name()), on, random.name(), height);
    }

    private Head head() {
        HeadId id = new HeadId(random.name());
        String family = random.name();
        return switch (random.one(List.of(0, 1, 2, 3))) {
            case 0 -> new Rotor(id, family, random.point(), random.arc(), random.length());
            case 1 -> new Spray(id, family, random.point(), random.arc(), random.length());
            case 2 -> new Bubbler(id, family, random.point());
            default -> new DripLine(id, family, random.route());
        };
    }

    private Lateral lateral(Zone zone) {
        List<PipeId> ids = random.list(i -> new PipeId(random.name()));
        List<HeadId> fed = ids.isEmpty() ? List.of() : random.some(zone.heads());
        return new Lateral(zone.id(), runs(ids, zone.valve()), random.mapped(fed, head -> random.one(ids)));
    }

    private HoseBib bib(List<PipeId> mainIds) {
        return new HoseBib(
                new BibId(random.name()),
                random.point(),
                any(mainIds),
                random.flow(),
                random.coin(),
                random.any(Phase.class));
    }
}
