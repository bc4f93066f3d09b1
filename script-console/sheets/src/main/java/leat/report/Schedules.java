package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.id.HeadId;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.plan.Yard;
import leat.model.quantity.Dimension;
import leat.model.quantity.Quantity;
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
                head("flow", Dimension.FLOW),
                head("rate", Dimension.PRECIPITATION),
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        for (Manifold manifold : water.manifolds()) {
            for (ZoneValve valve : manifold.valves()) {
                Optional<Zone> zone = water.zones().stream()
                        .filter(one -> one.valve().equals(valve.id()))
                        .findFirst();
                rows.add(List.of(
                        text(valve.id()),
                        text(manifold.id()),
                        Cell.text(valve.device()),
                        Cell.text(zone.map(one -> one.id().name()).orElse(valve.spare() ? "spare" : "none yet")),
                        zone.map(one -> Cell.count(one.heads().size())).orElse(Cell.UNKNOWN),
                        zone.map(one -> figure(one.id(), ReportFigures.FLOW)).orElse(Cell.UNKNOWN),
                        zone.map(one -> figure(one.id(), ReportFigures.RATE)).orElse(Cell.UNKNOWN),
                        zone.map(one -> Words.when(one.phase())).orElse(Cell.UNKNOWN)));
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
                head("east", Dimension.LENGTH),
                head("north", Dimension.LENGTH),
                head("radius", Dimension.LENGTH),
                head("arc from", Dimension.ANGLE),
                head("arc", Dimension.ANGLE),
                head("length", Dimension.LENGTH),
                head("pressure", Dimension.PRESSURE),
                head("flow", Dimension.FLOW));
        List<List<Cell>> rows = new ArrayList<>();
        for (Head head : water.heads()) {
            rows.add(List.of(
                    text(head.id()),
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
                    figure(head.id(), ReportFigures.PRESSURE),
                    figure(head.id(), ReportFigures.FLOW)));
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
                head("length", Dimension.LENGTH),
                "feeds",
                head("flow", Dimension.FLOW),
                head("velocity", Dimension.VELOCITY),
                head("loss", Dimension.PRESSURE),
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
                text(run.id()),
                Cell.text(part),
                Cell.text(Words.named(run.from())),
                Cell.text(WaterStyle.of(water.waterIn(run.id())).label()),
                Cell.text(run.series()),
                Cell.text(run.size().orElse("open")),
                Cell.figure(run.route().length(), units),
                Cell.text(feeds.getOrDefault(run.id(), "")),
                figure(run.id(), ReportFigures.FLOW),
                figure(run.id(), ReportFigures.VELOCITY),
                figure(run.id(), ReportFigures.LOSS),
                Cell.text(run.existing() ? "existing" : "new"),
                Words.when(run.phase()));
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
                head("drawn", Dimension.FLOW),
                head("pressure", Dimension.PRESSURE),
                "vacuum breaker",
                head("east", Dimension.LENGTH),
                head("north", Dimension.LENGTH),
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        for (HoseBib bib : water.bibs()) {
            rows.add(List.of(
                    text(bib.id()),
                    Cell.text(bib.on().map(PipeId::name).orElse("none yet")),
                    Cell.text(bib.on()
                            .map(pipe -> WaterStyle.of(water.waterIn(pipe)).label())
                            .orElse("")),
                    Cell.figure(bib.drawn(), units),
                    figure(bib.id(), ReportFigures.PRESSURE),
                    Cell.text(bib.vacuumBreaker() ? "yes" : "no"),
                    Cell.figure(bib.at().east(), units),
                    Cell.figure(bib.at().north(), units),
                    Words.when(bib.phase())));
        }
        return new Table(columns, rows);
    }

    Table trenches() {
        List<String> columns = List.of(
                "trench",
                head("length", Dimension.LENGTH),
                "depth, " + Words.smallUnit(units),
                "holds",
                "water",
                "dug",
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        for (TrenchSegment trench : yard.trenches()) {
            rows.add(List.of(
                    text(trench.id()),
                    Cell.figure(trench.route().length(), units),
                    new Cell(Words.smallNumber(trench.depth(), units), true),
                    Cell.text(String.join(
                            ", ", trench.contents().stream().map(Id::name).toList())),
                    Cell.text(waters(trench)),
                    Cell.text(trench.byHand() ? "by hand" : "by hand or machine"),
                    Words.when(trench.phase())));
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

    private String head(String name, Dimension dimension) {
        return Table.head(name, dimension, units);
    }

    private static Cell text(Id id) {
        return Cell.text(id.name());
    }

    private Cell figure(Id id, String name) {
        Quantity value = figures.of(id).get(name);
        return value == null ? Cell.UNKNOWN : Cell.figure(value, units);
    }
}
