package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import leat.model.plan.Yard;
import leat.model.power.PowerSystem;
import leat.model.quantity.Area;
import leat.model.quantity.Length;
import leat.model.quantity.Quantity;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;
import leat.model.water.ZoneValve;

/** The plan in a few lines: how much of everything. */
final class Facts {

    private final Yard yard;
    private final List<Map<String, Object>> lines = new ArrayList<>();

    Facts(Yard yard) {
        this.yard = yard;
    }

    List<Map<String, Object>> lines() {
        WaterSystem water = yard.water();
        yard.terrain().lot().ifPresent(lot -> add("Lot", show(lot.area())));
        double lawnM2 = yard.terrain().lawns().stream()
                .mapToDouble(lawn -> lawn.region().area().squareMetres())
                .sum();
        add("Lawn", lawnM2 == 0 ? "" : show(new Area(lawnM2)));
        add("Heads", heads(water));
        add("Zone valves", valves(water));
        add("New pipe", length(water, run -> !run.existing()));
        add("Existing pipe in use", length(water, PipeRun::existing));
        add("Trench", trench());
        add("Hose bibs", count(water.bibs().size()));
        water.sources()
                .forEach(source -> add(
                        "Source " + source.id(),
                        source.water().label() + ", static pressure " + show(source.staticPressure())));
        power(yard.power());
        return lines;
    }

    private void power(PowerSystem power) {
        add("Circuits", count(power.circuits().size()));
        add("Outlets", count(power.outlets().size()));
        add("Luminaires", count(power.luminaires().size()));
        add("Structures fed", count(power.feeds().size()));
        add("New conduit", conduit(power, false));
        add("Existing conduit in use", conduit(power, true));
    }

    private static String count(int number) {
        return number == 0 ? "" : Integer.toString(number);
    }

    private String conduit(PowerSystem power, boolean existing) {
        double lengthM = power.conduits().stream()
                .filter(one -> one.existing() == existing)
                .mapToDouble(one -> one.route().lengthM())
                .sum();
        return lengthM == 0 ? "" : show(new Length(lengthM));
    }

    private static String heads(WaterSystem water) {
        return water.heads().isEmpty()
                ? ""
                : water.heads().size() + " in " + Page.plural(water.zones().size(), "zone", "zones");
    }

    private static String valves(WaterSystem water) {
        List<ZoneValve> valves =
                water.manifolds().stream().flatMap(one -> one.valves().stream()).toList();
        long spares = valves.stream().filter(ZoneValve::spare).count();
        return valves.isEmpty()
                ? ""
                : valves.size() + " in " + Page.plural(water.manifolds().size(), "manifold", "manifolds") + ", "
                        + Page.plural(spares, "spare", "spares");
    }

    private String length(WaterSystem water, Predicate<PipeRun> which) {
        double lengthM = water.pipes()
                .filter(which)
                .mapToDouble(run -> run.route().lengthM())
                .sum();
        return lengthM == 0 ? "" : show(new Length(lengthM));
    }

    private String trench() {
        double lengthM = yard.trenches().stream()
                .mapToDouble(one -> one.route().lengthM())
                .sum();
        return lengthM == 0 ? "" : show(new Length(lengthM));
    }

    private String show(Quantity quantity) {
        return Words.show(quantity, yard.units());
    }

    private void add(String word, String value) {
        if (!value.isEmpty()) {
            lines.add(Map.of("word", word, "value", value));
        }
    }
}
