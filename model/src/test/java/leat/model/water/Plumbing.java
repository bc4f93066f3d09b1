package leat.model.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.geometry.Arc;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.id.BackflowId;
import leat.model.id.BibId;
import leat.model.id.HeadId;
import leat.model.id.ManifoldId;
import leat.model.id.PipeId;
import leat.model.id.SourceId;
import leat.model.id.UpstreamId;
import leat.model.id.ValveId;
import leat.model.id.ZoneId;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;
import leat.model.site.Phase;

/** Short words for the water systems of these tests; places do not matter in them. */
final class Plumbing {

    private static final Point HERE = new Point(0, 0);
    private static final Polyline ROUTE = Polyline.of(HERE, new Point(1, 0));

    private Plumbing() {}

    static Source mains(String name) {
        return new Mains(new SourceId(name), HERE, Pressure.psi(60), Optional.empty(), Optional.empty());
    }

    static Source tank(String name) {
        return new Tank(new SourceId(name), HERE, Length.metres(3), Optional.empty());
    }

    static PipeRun run(String name, UpstreamId from) {
        return new PipeRun(new PipeId(name), from, ROUTE, "PVC Schedule 40", Optional.empty(), false, Phase.NOW);
    }

    static PipeRun runFrom(String name, String pipe) {
        return run(name, new PipeId(pipe));
    }

    static BackflowPreventer backflow(String name, String on) {
        return new BackflowPreventer(new BackflowId(name), new PipeId(on), "bfp-pvb-1", Length.inches(12));
    }

    static Manifold manifold(String name, String on, ZoneValve... valves) {
        return new Manifold(
                new ManifoldId(name),
                HERE,
                Optional.of(on).filter(one -> !one.isEmpty()).map(PipeId::new),
                List.of(valves));
    }

    static ZoneValve valve(String name) {
        return new ZoneValve(new ValveId(name), "valve-1", false);
    }

    static ZoneValve spare(String name) {
        return new ZoneValve(new ValveId(name), "valve-1", true);
    }

    static Head rotor(String name) {
        return new Rotor(new HeadId(name), "rotor-9", HERE, Arc.FULL, Length.metres(9));
    }

    static Zone zone(String name, String valve, String... heads) {
        return new Zone(
                new ZoneId(name),
                new ValveId(valve),
                Arrays.stream(heads).map(HeadId::new).toList(),
                Phase.NOW);
    }

    static Lateral lateral(String zone, List<PipeRun> runs, String... headsAndPipes) {
        SortedMap<HeadId, PipeId> heads = new TreeMap<>();
        for (int i = 0; i < headsAndPipes.length; i += 2) {
            heads.put(new HeadId(headsAndPipes[i]), new PipeId(headsAndPipes[i + 1]));
        }
        return new Lateral(new ZoneId(zone), runs, heads);
    }

    static HoseBib bib(String name, String on) {
        return new HoseBib(
                new BibId(name),
                HERE,
                Optional.of(on).filter(one -> !one.isEmpty()).map(PipeId::new),
                Flow.gpm(5),
                true,
                Phase.NOW);
    }

    /** A whole small system: street, service, main behind a backflow preventer, two zones, a bib on each side, a tank. */
    static WaterSystem whole() {
        Main main = new Main(List.of(
                run("service", new SourceId("street")),
                runFrom("main", "service"),
                runFrom("main end", "main"),
                runFrom("house side", "service"),
                run("butt", new SourceId("tank"))));
        List<PipeRun> front = List.of(run("F1", new ValveId("V1")), runFrom("F2", "F1"), runFrom("F3", "F1"));
        List<PipeRun> back = List.of(run("B1", new ValveId("V2")));
        return new WaterSystem(
                List.of(mains("street"), tank("tank")),
                List.of(backflow("cage", "main")),
                main,
                List.of(
                        manifold("box", "main end", valve("V1"), valve("V2"), spare("V3")),
                        manifold("shed", "", valve("V4"))),
                List.of(rotor("R1"), rotor("R2"), rotor("R3"), rotor("R10")),
                List.of(zone("front", "V1", "R2", "R1"), zone("back", "V2", "R10"), zone("shade", "V4")),
                List.of(
                        lateral("front", front, "R1", "F2", "R2", "F3"),
                        lateral("back", back, "R10", "B1"),
                        lateral("shade", List.of(run("S1", new ValveId("V4"))))),
                List.of(bib("court", "main"), bib("kitchen", "house side"), bib("loose", "")));
    }

    static <T> List<T> and(List<T> list, T one) {
        List<T> more = new ArrayList<>(list);
        more.add(one);
        return more;
    }
}
