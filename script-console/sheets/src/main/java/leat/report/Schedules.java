package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.plan.Yard;
import leat.model.quantity.Dimension;
import leat.model.quantity.UnitSystem;
import leat.model.trench.TrenchSegment;
import leat.model.water.DripLine;
import leat.model.water.Head;
import leat.model.water.HoseBib;
import leat.model.water.Lateral;
import leat.model.water.Manifold;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;
import leat.model.water.ZoneValve;

/** The schedules of a plan: what a builder buys and sets, thing by thing, in the order of their names. */
final class Schedules {

    private final Yard yard;
    private final WaterSystem water;
    private final UnitSystem units;
    private final ReportFigures figures;

    Schedules(Yard yard, ReportFigures figures) {
        this.yard = yard;
        this.water = yard.water();
        this.units = yard.units();
        this.figures = figures;
    }

    Table valves() {
        List<String> columns = List.of(
                "valve",
                "manifold",
                "device",
                "zone",
                "heads",
                Table.head("flow", Dimension.FLOW, units),
                Table.head("rate", Dimension.PRECIPITATION, units),
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        for (Manifold manifold : water.manifolds()) {
            for (ZoneValve valve : manifold.valves()) {
                Optional<Zone> zone = water.zones().stream()
                        .filter(one -> one.valve().equals(valve.id()))
                        .findFirst();
                rows.add(List.of(
                        Cell.name(valve.id()),
                        Cell.name(manifold.id()),
                        Cell.text(valve.device()),
                        Cell.text(zone.map(one -> one.id().name()).orElse(valve.spare() ? "spare" : "none yet")),
                        zone.map(one -> Cell.count(one.heads().size())).orElse(Cell.UNKNOWN),
                        zone.map(one -> figures.cell(one.id(), ReportFigures.FLOW, units))
                                .orElse(Cell.UNKNOWN),
                        zone.map(one -> figures.cell(one.id(), ReportFigures.RATE, units))
                                .orElse(Cell.UNKNOWN),
                        zone.map(one -> Cell.when(one.phase())).orElse(Cell.UNKNOWN)));
            }
        }
        return new Table(columns, rows);
    }

    Table heads() {
        List<String> columns = List.of(
                "head",
                "kind",
                "family",
                "zone",
                Table.head("east", Dimension.LENGTH, units),
                Table.head("north", Dimension.LENGTH, units),
                Table.head("radius", Dimension.LENGTH, units),
                Table.head("arc from", Dimension.ANGLE, units),
                Table.head("arc", Dimension.ANGLE, units),
                Table.head("length", Dimension.LENGTH, units),
                Table.head("pressure", Dimension.PRESSURE, units),
                Table.head("flow", Dimension.FLOW, units));
        List<List<Cell>> rows = new ArrayList<>();
        for (Head head : water.heads()) {
            rows.add(List.of(
                    Cell.name(head.id()),
                    Cell.text(HeadWords.shape(head)),
                    Cell.text(head.family()),
                    Cell.text(water.zoneOf(head.id())
                            .map(zone -> zone.id().name())
                            .orElse("none yet")),
                    Cell.figure(head.at().east(), units),
                    Cell.figure(head.at().north(), units),
                    head.sector().map(one -> Cell.figure(one.radius(), units)).orElse(Cell.UNKNOWN),
                    head.sector()
                            .filter(one -> !one.arc().isFull())
                            .map(one -> Cell.figure(one.arc().start(), units))
                            .orElse(Cell.UNKNOWN),
                    head.sector()
                            .map(one -> Cell.figure(one.arc().sweep(), units))
                            .orElse(Cell.UNKNOWN),
                    head instanceof DripLine line ? Cell.figure(line.path().length(), units) : Cell.UNKNOWN,
                    figures.cell(head.id(), ReportFigures.PRESSURE, units),
                    figures.cell(head.id(), ReportFigures.FLOW, units)));
        }
        return new Table(columns, rows);
    }

    Table pipes() {
        List<String> columns = List.of(
                "pipe",
                "part of",
                "fed by",
                "water",
                "series",
                "size",
                Table.head("length", Dimension.LENGTH, units),
                "feeds",
                Table.head("flow", Dimension.FLOW, units),
                Table.head("velocity", Dimension.VELOCITY, units),
                Table.head("loss", Dimension.PRESSURE, units),
                "state",
                "when");
        SortedMap<PipeId, String> feeds = feeds();
        List<List<Cell>> rows = new ArrayList<>();
        water.main().runs().forEach(run -> rows.add(pipe(run, "main", feeds)));
        for (Lateral lateral : water.laterals()) {
            lateral.runs().forEach(run -> rows.add(pipe(run, Words.named(lateral.zone()), feeds)));
        }
        return new Table(columns, rows);
    }

    private List<Cell> pipe(PipeRun run, String part, SortedMap<PipeId, String> feeds) {
        return List.of(
                Cell.name(run.id()),
                Cell.text(part),
                Cell.text(Words.named(run.from())),
                Cell.text(WaterStyle.of(water.waterIn(run.id())).label()),
                Cell.text(run.series()),
                Cell.text(run.size().orElse("open")),
                Cell.figure(run.route().length(), units),
                Cell.text(feeds.getOrDefault(run.id(), "")),
                figures.cell(run.id(), ReportFigures.FLOW, units),
                figures.cell(run.id(), ReportFigures.VELOCITY, units),
                figures.cell(run.id(), ReportFigures.LOSS, units),
                Cell.state(run.existing()),
                Cell.when(run.phase()));
    }

    /** For each pipe the heads at its end, by name. */
    private SortedMap<PipeId, String> feeds() {
        SortedMap<PipeId, String> feeds = new TreeMap<>();
        for (Lateral lateral : water.laterals()) {
            for (Map.Entry<HeadId, PipeId> entry : lateral.heads().entrySet()) {
                feeds.merge(entry.getValue(), entry.getKey().name(), (before, more) -> before + ", " + more);
            }
        }
        return feeds;
    }

    Table bibs() {
        List<String> columns = List.of(
                "hose bib",
                "on pipe",
                "water",
                Table.head("drawn", Dimension.FLOW, units),
                Table.head("pressure", Dimension.PRESSURE, units),
                "vacuum breaker",
                Table.head("east", Dimension.LENGTH, units),
                Table.head("north", Dimension.LENGTH, units),
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        for (HoseBib bib : water.bibs()) {
            rows.add(List.of(
                    Cell.name(bib.id()),
                    Cell.text(bib.on().map(PipeId::name).orElse("none yet")),
                    Cell.text(bib.on()
                            .map(pipe -> WaterStyle.of(water.waterIn(pipe)).label())
                            .orElse("")),
                    Cell.figure(bib.drawn(), units),
                    figures.cell(bib.id(), ReportFigures.PRESSURE, units),
                    Cell.text(bib.vacuumBreaker() ? "yes" : "no"),
                    Cell.figure(bib.at().east(), units),
                    Cell.figure(bib.at().north(), units),
                    Cell.when(bib.phase())));
        }
        return new Table(columns, rows);
    }

    Table trenches() {
        List<String> columns = List.of(
                "trench",
                Table.head("length", Dimension.LENGTH, units),
                "depth, " + Words.smallUnit(units),
                "holds",
                "water",
                "dug",
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        for (TrenchSegment trench : yard.trenches()) {
            rows.add(List.of(
                    Cell.name(trench.id()),
                    Cell.figure(trench.route().length(), units),
                    Cell.small(trench.depth(), units),
                    Cell.names(trench.contents().stream()),
                    Cell.text(waters(trench)),
                    Cell.text(trench.byHand() ? "by hand" : ""),
                    Cell.when(trench.phase())));
        }
        return new Table(columns, rows);
    }

    private String waters(TrenchSegment trench) {
        return String.join(
                ", ",
                trench.pipes().stream()
                        .map(pipe -> WaterStyle.of(water.waterIn(pipe)))
                        .distinct()
                        .sorted()
                        .map(WaterStyle::label)
                        .toList());
    }
}
