package leat.report;

import java.util.ArrayList;
import java.util.List;
import leat.model.plan.Yard;
import leat.model.quantity.Pressure;
import leat.model.site.ExistingService;
import leat.model.site.Obstacle;
import leat.model.site.SurfaceKind;
import leat.model.water.Mains;
import leat.model.water.WaterSystem;

/** Which cautions apply to what is in a plan. In doubt one too many: a caution costs a line, its absence a hand. */
final class Hazards {

    /** Above this a supply wants a pressure reducing valve; IPC 604.8 and UPC 608.2, 80 psi, from memory. */
    private static final Pressure HIGH = Pressure.psi(80);

    private final Yard yard;
    private final WaterSystem water;
    private final List<String> topics = new ArrayList<>();

    private Hazards(Yard yard) {
        this.yard = yard;
        this.water = yard.water();
    }

    /** Topics in the order in which a builder meets them. */
    static List<String> in(Yard yard) {
        Hazards hazards = new Hazards(yard);
        hazards.digging();
        hazards.water();
        hazards.electricity();
        return List.copyOf(hazards.topics);
    }

    private void digging() {
        boolean newPipe = water.pipes().anyMatch(pipe -> !pipe.existing());
        boolean newConduit = yard.power().conduits().stream().anyMatch(one -> !one.existing());
        boolean digs = newPipe || newConduit || !yard.trenches().isEmpty();
        add("Call before digging", digs);
        add("Gas lines", has(ExistingService.Kind.GAS) || has(ExistingService.Kind.UNKNOWN));
        add("Trench collapse", digs);
        add("Tree roots", yard.terrain().obstacles().stream().anyMatch(Obstacle.Tree.class::isInstance));
        add("Slopes, walls and drainage", digs);
        add("Silica, noise, machines and lifting", digs);
    }

    private void water() {
        boolean pipes = water.pipes().findAny().isPresent();
        boolean ownSource = water.sources().stream().anyMatch(source -> !(source instanceof Mains));
        add(
                "Backflow and cross-connection",
                !water.heads().isEmpty() || !water.bibs().isEmpty() || pipes);
        add("Wells, pumps and other sources", ownSource);
        add(
                "High supply pressure",
                water.sources().stream()
                        .anyMatch(source -> source.staticPressure().compareTo(HIGH) > 0));
        add("Pressure testing", pipes);
        add("Pressure rating and temperature", pipes);
        add("Water hammer", !water.manifolds().isEmpty() || !water.zones().isEmpty());
        add(
                "Solvent cement vapours",
                water.pipes().anyMatch(pipe -> pipe.series().contains("PVC")));
        add("Freezing and winterising", pipes);
        add("Runoff and slippery paths", !water.heads().isEmpty());
    }

    private void electricity() {
        boolean valves =
                !water.manifolds().isEmpty() || !yard.power().valveCables().isEmpty();
        boolean pump = water.sources().stream().anyMatch(leat.model.water.Pump.class::isInstance);
        boolean power = pump || !yard.power().isEmpty();
        boolean pond = yard.terrain().surfaces().stream().anyMatch(one -> one.kind() == SurfaceKind.WATER);
        add("Electric shock", power || has(ExistingService.Kind.POWER));
        add("Licensed electrician and permits", power);
        add("GFCI and RCD protection", power);
        add("Equipment grounding and bonding", power);
        add("Low-voltage valve wiring", valves);
        add("Low-voltage lights", !yard.power().transformers().isEmpty());
        add("Wet places, pools and ponds", pond);
        add("Lightning", valves || power);
    }

    private boolean has(ExistingService.Kind kind) {
        return yard.terrain().services().stream().anyMatch(service -> service.kind() == kind);
    }

    private void add(String topic, boolean applies) {
        if (applies) {
            topics.add(topic);
        }
    }
}
