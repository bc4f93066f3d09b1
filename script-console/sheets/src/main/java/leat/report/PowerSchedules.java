package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Collectors;
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

    /** What sizes of conductors are counted in. */
    private final String wireUnit;

    /** @param grounding sizes of the grounding conductors, as far as they are known */
    PowerSchedules(Yard yard, ReportFigures figures, SortedMap<CableId, String> grounding) {
        this.power = yard.power();
        this.units = yard.units();
        this.figures = figures;
        this.grounding = grounding;
        this.wireUnit = WireStyle.sizeUnit(yard.codeFamily());
    }

    Table panels() {
        List<String> columns = List.of(
                "panel",
                "inside",
                Table.head("voltage", Dimension.VOLTAGE, units),
                Table.head("main breaker", Dimension.CURRENT, units),
                "circuits of this plan",
                "spare ways before them",
                "state",
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        for (Panel panel : power.panels()) {
            int circuits = power.circuitsFrom(panel.id()).size();
            rows.add(List.of(
                    Cell.name(panel.id()),
                    Cell.text(panel.inside().map(Id::name).orElse("")),
                    Cell.figure(panel.voltage(), units),
                    Cell.figure(panel.rating(), units),
                    Cell.count(circuits),
                    Cell.figure(panel.spareWays(), units),
                    Cell.state(panel.existing()),
                    Cell.when(panel.phase())));
        }
        return new Table(columns, rows);
    }

    Table circuits() {
        List<String> columns = List.of(
                "circuit",
                "from",
                Table.head("breaker", Dimension.CURRENT, units),
                Table.head("voltage", Dimension.VOLTAGE, units),
                "live wires",
                "laid as",
                "ground-fault protection",
                "feeds",
                Table.head("load", Dimension.POWER, units),
                Table.head("current", Dimension.CURRENT, units),
                Table.head("reckoned", Dimension.CURRENT, units),
                "conductor, " + wireUnit,
                Table.head("ampacity", Dimension.CURRENT, units),
                Table.head("voltage drop", Dimension.RATIO, units),
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        for (Circuit circuit : power.circuits()) {
            rows.add(List.of(
                    Cell.name(circuit.id()),
                    Cell.name(circuit.supply()),
                    Cell.figure(circuit.breaker(), units),
                    Cell.figure(circuit.voltage(), units),
                    Cell.count(circuit.liveWires()),
                    Cell.text(circuit.method() == WiringMethod.IN_CONDUIT ? "wires in conduit" : "buried cable"),
                    Cell.text(protection(circuit)),
                    Cell.names(power.loadsOf(circuit.id()).stream().map(Load::id)),
                    Cell.figure(load(circuit.id()), units),
                    figures.cell(circuit.id(), ReportFigures.CURRENT, units),
                    figures.cell(circuit.id(), ReportFigures.RECKONED, units),
                    Cell.text(conductors(circuit.id())),
                    figures.cell(circuit.id(), ReportFigures.AMPACITY, units),
                    figures.cell(circuit.id(), ReportFigures.DROP, units),
                    Cell.when(circuit.phase())));
        }
        return new Table(columns, rows);
    }

    private String protection(Circuit circuit) {
        if (circuit.groundFault()) {
            return "at its origin";
        }
        String outlets = power.outlets().stream()
                .filter(outlet -> outlet.groundFault()
                        && outlet.circuit().filter(circuit.id()::equals).isPresent())
                .map(outlet -> outlet.id().name())
                .collect(Collectors.joining(", "));
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
                Table.head("power", Dimension.POWER, units),
                Table.head("voltage drop", Dimension.RATIO, units),
                "notes",
                Table.head("east", Dimension.LENGTH, units),
                Table.head("north", Dimension.LENGTH, units),
                "when",
                "laid now");
        List<List<Cell>> rows = new ArrayList<>();
        power.loads()
                .forEach(load -> rows.add(List.of(
                        Cell.name(load.id()),
                        Cell.text(load.id().kind()),
                        Cell.text(load.circuit().map(Id::name).orElse(load.isWired() ? "none yet" : "plugged in")),
                        Cell.figure(load.power(), units),
                        figures.cell(load.id(), ReportFigures.DROP, units),
                        Cell.text(about(load)),
                        Cell.figure(load.at().east(), units),
                        Cell.figure(load.at().north(), units),
                        Cell.when(load.phase()),
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
                "size, " + wireUnit,
                "grounding",
                Table.head("length", Dimension.LENGTH, units),
                Table.head("current", Dimension.CURRENT, units),
                Table.head("ampacity", Dimension.CURRENT, units),
                Table.head("lost", Dimension.VOLTAGE, units),
                "through conduits",
                "state",
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        power.cables()
                .forEach(cable -> rows.add(List.of(
                        Cell.name(cable.id()),
                        Cell.text(purpose(cable)),
                        Cell.text(Words.named(cable.from())),
                        Cell.text(Words.named(cable.to())),
                        Cell.text(conductors(cable)),
                        Cell.text(cable.conductor().orElse("open")),
                        Cell.text(grounding.getOrDefault(cable.id(), "")),
                        Cell.figure(cable.route().length(), units),
                        figures.cell(cable.id(), ReportFigures.CURRENT, units),
                        figures.cell(cable.id(), ReportFigures.AMPACITY, units),
                        figures.cell(cable.id(), ReportFigures.LOST, units),
                        Cell.names(cable.conduits().stream()),
                        Cell.state(cable.existing()),
                        Cell.when(cable.phase()))));
        return new Table(columns, rows);
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
                Table.head("length", Dimension.LENGTH, units),
                "holds",
                "lies in it already",
                Table.head("fill", Dimension.RATIO, units),
                Table.head("at most", Dimension.RATIO, units),
                "state",
                "when");
        List<List<Cell>> rows = new ArrayList<>();
        for (Conduit conduit : power.conduits()) {
            List<Cable> held = power.cablesIn(conduit.id());
            rows.add(List.of(
                    Cell.name(conduit.id()),
                    Cell.text(conduit.series()),
                    Cell.text(conduit.size().orElse("open")),
                    Cell.figure(conduit.route().length(), units),
                    held.isEmpty()
                            ? Cell.text("spare")
                            : Cell.names(held.stream().map(Cable::id)),
                    Cell.text(conduit.occupied().stream()
                            .map(wires -> wires.count() + " of " + wires.size())
                            .collect(Collectors.joining(", "))),
                    figures.cell(conduit.id(), ReportFigures.FILL, units),
                    figures.cell(conduit.id(), ReportFigures.MOST_FILL, units),
                    Cell.state(conduit.existing()),
                    Cell.when(conduit.phase())));
        }
        return new Table(columns, rows);
    }
}
