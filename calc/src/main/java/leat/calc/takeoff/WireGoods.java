package leat.calc.takeoff;

import java.util.List;
import java.util.Optional;
import leat.calc.wiring.CableFigures;
import leat.model.catalog.MaterialKind;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.id.ConduitId;
import leat.model.id.Id;
import leat.model.id.ManifoldId;
import leat.model.plan.Site;
import leat.model.power.Cable;
import leat.model.power.Circuit;
import leat.model.power.PowerCable;
import leat.model.power.ValveCable;
import leat.model.power.WiringMethod;
import leat.model.quantity.Length;
import leat.model.site.Phase;
import leat.model.water.WaterSystem;

/** New conductors, colour by colour, with what they need to come up at their ends and to be worked on in boxes. */
final class WireGoods {

    private static final String SPLICE = "splice connector waterproof";

    private final PowerYard yard;
    private final WaterSystem water;
    private final TakeoffParameters parameters;
    private final Depths depths;
    private final Materials materials;

    WireGoods(Site site, PowerYard yard, TakeoffParameters parameters, Depths depths, Materials materials) {
        this.yard = yard;
        water = site.yard().water();
        this.parameters = parameters;
        this.depths = depths;
        this.materials = materials;
    }

    void count() {
        yard.power().powerCables().stream().filter(one -> !one.existing()).forEach(this::power);
        yard.power().valveCables().stream().filter(one -> !one.existing()).forEach(this::control);
    }

    private void power(PowerCable cable) {
        Circuit circuit = yard.power().circuit(cable.circuit()).orElseThrow();
        if (circuit.isLowVoltage()) {
            lamps(cable);
            return;
        }
        List<String> colours = WireRoles.colours(circuit, yard.hasNeutral(circuit), yard.code());
        String size =
                cable.conductor().map(one -> WireRoles.sized(one, yard.code())).orElse("of open size");
        Length length = length(cable);
        if (circuit.method() == WiringMethod.IN_CONDUIT) {
            int grounding = colours.size() - 1;
            colours.subList(0, grounding).forEach(colour -> wire(cable, "wire " + size + " " + colour, length));
            wire(cable, "wire " + grounding(cable).orElse(size) + " " + colours.get(grounding), length);
        } else {
            wire(cable, "buried cable " + size + ", " + (colours.size() - 1) + " wires and ground", length);
        }
        endEarly(cable, colours.size());
    }

    /** Two conductors in one sheath, joined to the lamp in the ground. */
    private void lamps(PowerCable cable) {
        String size =
                cable.conductor().map(one -> WireRoles.sized(one, yard.code())).orElse("of open size");
        wire(cable, "low-voltage cable " + size + ", 2 wires", length(cable));
        materials.count(
                yard.phaseOf(cable.to()),
                MaterialKind.ELECTRICAL_DEVICE,
                SPLICE,
                "waterproof splice connector",
                2,
                Subject.of(cable.id()),
                "both wires at " + named(cable.to()));
        endEarly(cable, 2);
    }

    /** As the review of the wiring found it, in the letters of a keyboard. */
    private Optional<String> grounding(PowerCable cable) {
        return parameters
                .wiring()
                .flatMap(wiring -> wiring.cable(cable.id()))
                .flatMap(CableFigures::grounding)
                .map(label -> label.replace("mm²", "mm2"));
    }

    private void control(ValveCable cable) {
        String size =
                cable.conductor().map(one -> WireRoles.sized(one, yard.code())).orElse("of open size");
        wire(cable, "valve cable " + size + ", " + cable.strands() + " strands", length(cable));
        ManifoldId to = cable.to();
        int valves = water.manifolds().stream()
                .filter(one -> one.id().equals(to))
                .mapToInt(one -> one.valves().size())
                .sum();
        materials.count(
                cable.phase(),
                MaterialKind.ELECTRICAL_DEVICE,
                SPLICE,
                "waterproof splice connector",
                2 * valves,
                Subject.of(to),
                "each valve's own wire and its share of the common");
    }

    /** Conductors of now to a thing of later: ends insulated one by one in a box, and a tag. */
    private void endEarly(PowerCable cable, int conductors) {
        if (cable.phase() == Phase.NOW && yard.phaseOf(cable.to()) == Phase.LATER) {
            Subject subject = Subject.of(cable.id());
            materials.count(
                    Phase.NOW,
                    MaterialKind.ELECTRICAL_DEVICE,
                    "wire connector",
                    "insulated wire connector",
                    conductors,
                    subject,
                    "ends that wait for " + named(cable.to()));
            materials.count(
                    Phase.NOW,
                    MaterialKind.ELECTRICAL_BOX,
                    "outdoor box",
                    "outdoor box",
                    1,
                    subject,
                    "holds the ends that wait for " + named(cable.to()));
            materials.count(Phase.NOW, MaterialKind.MARKING, "tag", "tag", 1, subject, "says what it waits for");
        }
    }

    private void wire(Cable cable, String key, Length length) {
        materials.add(
                cable.phase(),
                MaterialKind.WIRE,
                key,
                key,
                new MaterialUse(Subject.of(cable.id()), named(cable.from()) + " to " + named(cable.to()), length));
    }

    /** Along the ground, up at both ends where it lies in it, and slack in the box at each end. */
    private Length length(Cable cable) {
        double alongM = depths.slopeLengthM(cable.route());
        double endsM =
                riseM(cable, cable.route().start()) + riseM(cable, cable.route().end());
        return new Length(alongM + endsM + 2 * parameters.slackAtBox().metres());
    }

    /** From the trench of the cable itself or of the nearest of its conduits up to a box on a wall or a post. */
    private double riseM(Cable cable, Point end) {
        Optional<ConduitId> conduit =
                cable.conduits().stream().min((one, other) -> Double.compare(awayM(one, end), awayM(other, end)));
        double depthM = conduit.map(one -> depths.depthM(one, end)).orElse(depths.depthM(cable.id(), end));
        return depthM > 0 ? depthM + parameters.boxHeight().metres() : 0;
    }

    private double awayM(ConduitId conduit, Point end) {
        return yard.power()
                .conduit(conduit)
                .map(one -> one.route().nearest(end).distanceM(end))
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static String named(Id id) {
        return id.kind() + " " + id.name();
    }
}
