package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.Id;
import leat.model.plan.Yard;
import leat.model.power.Ahead;
import leat.model.power.Cable;
import leat.model.power.Circuit;
import leat.model.power.Conduit;
import leat.model.power.Controller;
import leat.model.power.LampSupply;
import leat.model.power.Load;
import leat.model.power.Luminaire;
import leat.model.power.Outlet;
import leat.model.power.Panel;
import leat.model.power.PowerCable;
import leat.model.power.PowerSystem;
import leat.model.power.Transformer;
import leat.model.power.ValveCable;
import leat.model.power.WiringMethod;
import leat.model.quantity.Dimension;
import leat.model.quantity.Power;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;
import leat.model.quantity.Voltage;

/** The schedules of power and control: panels, circuits, what they feed, cables, conduits. */
final class PowerSchedules {

    private final PowerSystem power;
    private final UnitSystem units;
    private final ReportFigures figures;
    private final SortedMap<CableId, String> grounding;

    /** @param grounding sizes of the grounding conductors, as far as they are known */
    PowerSchedules(Yard yard, ReportFigures figures, SortedMap<CableId, String> grounding) {
        this.power = yard.power();
        this.units = yard.units();
        this.figures = figures;
        this.grounding = grounding;
    }

    Table panels() {
        List<String> columns = List.of(
                "panel",
                "inside",
                head("voltage", Dimension.VOLTAGE),
                head("main breaker", Dimension.CURRENT),
                "circuits of this plan",
                "spare ways before them",
                "state",
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        for (Panel panel : power.panels()) {
            int circuits = power.circuitsFrom(panel.id()).size();
            rows.add(List.of(
                    text(panel.id()),
                    Cell.text(panel.inside().map(Id::name).orElse("")),
                    Cell.figure(panel.voltage(), units),
                    Cell.figure(panel.rating(), units),
                    Cell.count(circuits),
                    Cell.figure(panel.spareWays(), units),
                    state(panel.existing()),
                    Words.when(panel.phase())));
        }
        return new Table(columns, rows);
    }

    Table circuits() {
        List<String> columns = List.of(
                "circuit",
                "from",
                head("breaker", Dimension.CURRENT),
                head("voltage", Dimension.VOLTAGE),
                "live wires",
                "laid as",
                "ground-fault protection",
                "feeds",
                head("load", Dimension.POWER),
                head("current", Dimension.CURRENT),
                head("reckoned", Dimension.CURRENT),
                "conductor",
                head("ampacity", Dimension.CURRENT),
                head("voltage drop", Dimension.RATIO),
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        for (Circuit circuit : power.circuits()) {
            rows.add(List.of(
                    text(circuit.id()),
                    text(circuit.supply()),
                    Cell.figure(circuit.breaker(), units),
                    Cell.figure(circuit.voltage(), units),
                    Cell.count(circuit.liveWires()),
                    Cell.text(circuit.method() == WiringMethod.IN_CONDUIT ? "wires in conduit" : "buried cable"),
                    Cell.text(protection(circuit)),
                    Cell.text(names(power.loadsOf(circuit.id()).stream().map(Load::id))),
                    Cell.figure(load(circuit.id()), units),
                    figure(circuit.id(), ReportFigures.CURRENT),
                    figure(circuit.id(), ReportFigures.RECKONED),
                    Cell.text(conductors(circuit.id())),
                    figure(circuit.id(), ReportFigures.AMPACITY),
                    figure(circuit.id(), ReportFigures.DROP),
                    Words.when(circuit.phase())));
        }
        return new Table(columns, rows);
    }

    private String protection(Circuit circuit) {
        if (circuit.groundFault()) {
            return "at its origin";
        }
        String outlets = names(power.outlets().stream()
                .filter(outlet -> outlet.groundFault()
                        && outlet.circuit().filter(circuit.id()::equals).isPresent())
                .map(Outlet::id));
        return outlets.isEmpty() ? "none" : "at " + outlets;
    }

    private Power load(CircuitId circuit) {
        return new Power(power.loadsOf(circuit).stream()
                .mapToDouble(load -> load.power().si())
                .sum());
    }

    private String conductors(CircuitId circuit) {
        return power.cablesOf(circuit).stream()
                .map(cable -> cable.conductor().orElse("open"))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    Table loads() {
        List<String> columns = List.of(
                "thing",
                "kind",
                "circuit",
                head("power", Dimension.POWER),
                head("voltage drop", Dimension.RATIO),
                "notes",
                head("east", Dimension.LENGTH),
                head("north", Dimension.LENGTH),
                "when",
                "laid now");
        List<List<Cell>> rows = new ArrayList<>();
        power.loads()
                .forEach(load -> rows.add(List.of(
                        text(load.id()),
                        Cell.text(load.id().kind()),
                        Cell.text(load.circuit().map(Id::name).orElse(load.isWired() ? "none yet" : "plugged in")),
                        Cell.figure(load.power(), units),
                        figure(load.id(), ReportFigures.DROP),
                        Cell.text(about(load)),
                        Cell.figure(load.at().east(), units),
                        Cell.figure(load.at().north(), units),
                        Words.when(load.phase()),
                        Cell.text(ahead(load.ahead())))));
        return new Table(columns, rows);
    }

    private String about(Load load) {
        if (load instanceof Outlet outlet) {
            return outlet.groundFault() ? "protects itself against leaking current" : "";
        }
        if (load instanceof Luminaire light) {
            return light.lightSwitch().map(one -> "switched by " + one).orElse("")
                    + light.lamp().map(lamp -> lamp(light, lamp)).orElse("");
        }
        if (load instanceof Transformer transformer) {
            String taps = String.join(
                    ", ", transformer.taps().stream().map(Voltage::toString).toList());
            return "taps " + taps + shown(load.id(), ReportFigures.LOADED, ", loaded ")
                    + transformer.plug().map(one -> ", in outlet " + one).orElse("");
        }
        if (load instanceof Controller controller) {
            return controller.stations() + " stations"
                    + controller.inside().map(one -> ", in " + one).orElse("");
        }
        return "";
    }

    private String lamp(Luminaire light, LampSupply lamp) {
        return "works from " + lamp.least() + " to " + lamp.most()
                + shown(light.id(), ReportFigures.VOLTAGE, ", gets ");
    }

    private String shown(Id id, String figure, String before) {
        Quantity value = figures.of(id).get(figure);
        return value == null ? "" : before + Units.show(value, units);
    }

    private static String ahead(Ahead ahead) {
        return switch (ahead) {
            case NOTHING -> "";
            case CONDUIT -> "empty conduit, pull string";
            case WIRES -> "conductors, capped and tagged";
        };
    }

    Table cables() {
        List<String> columns = List.of(
                "cable",
                "for",
                "from",
                "to",
                "conductors",
                "size",
                "grounding",
                head("length", Dimension.LENGTH),
                head("current", Dimension.CURRENT),
                head("ampacity", Dimension.CURRENT),
                head("lost", Dimension.VOLTAGE),
                "through conduits",
                "state",
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        power.cables()
                .forEach(cable -> rows.add(List.of(
                        text(cable.id()),
                        Cell.text(purpose(cable)),
                        Cell.text(Words.named(cable.from())),
                        Cell.text(Words.named(cable.to())),
                        Cell.text(conductors(cable)),
                        Cell.text(cable.conductor().orElse("open")),
                        Cell.text(grounding.getOrDefault(cable.id(), "")),
                        Cell.figure(cable.route().length(), units),
                        figure(cable.id(), ReportFigures.CURRENT),
                        figure(cable.id(), ReportFigures.AMPACITY),
                        lost(cable.id()),
                        Cell.text(names(cable.conduits().stream())),
                        state(cable.existing()),
                        Words.when(cable.phase()))));
        return new Table(columns, rows);
    }

    /** Finer than voltages elsewhere: a cable loses little. */
    private Cell lost(CableId id) {
        Quantity lost = figures.of(id).get(ReportFigures.LOST);
        return lost == null ? Cell.UNKNOWN : new Cell(String.format(Locale.ROOT, "%.2f", lost.si()), true);
    }

    private static String purpose(Cable cable) {
        return cable instanceof PowerCable wires ? "circuit " + wires.circuit() : "valves";
    }

    private String conductors(Cable cable) {
        if (cable instanceof ValveCable wires) {
            return wires.strands() + " strands";
        }
        Optional<Circuit> circuit =
                cable instanceof PowerCable wires ? power.circuit(wires.circuit()) : Optional.empty();
        return circuit.map(one -> one.isLowVoltage() ? "2" : one.liveWires() + " and ground")
                .orElse("");
    }

    Table conduits() {
        List<String> columns = List.of(
                "conduit",
                "series",
                "size",
                head("length", Dimension.LENGTH),
                "holds",
                "lies in it already",
                head("fill", Dimension.RATIO),
                head("at most", Dimension.RATIO),
                "state",
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        for (Conduit conduit : power.conduits()) {
            List<Cable> held = power.cablesIn(conduit.id());
            rows.add(List.of(
                    text(conduit.id()),
                    Cell.text(conduit.series()),
                    Cell.text(conduit.size().orElse("open")),
                    Cell.figure(conduit.route().length(), units),
                    Cell.text(held.isEmpty() ? "spare" : names(held.stream().map(Cable::id))),
                    Cell.text(conduit.occupied().stream()
                            .map(wires -> wires.count() + " of " + wires.size())
                            .collect(Collectors.joining(", "))),
                    figure(conduit.id(), ReportFigures.FILL),
                    figure(conduit.id(), ReportFigures.MOST_FILL),
                    state(conduit.existing()),
                    Words.when(conduit.phase())));
        }
        return new Table(columns, rows);
    }

    private static String names(Stream<? extends Id> ids) {
        return ids.map(Id::name).collect(Collectors.joining(", "));
    }

    private static Cell state(boolean existing) {
        return Cell.text(existing ? "existing" : "new");
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
