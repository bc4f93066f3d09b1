package leat.calc.takeoff;

import leat.model.catalog.MaterialKind;
import leat.model.finding.Subject;
import leat.model.id.Id;
import leat.model.plan.Site;
import leat.model.power.Circuit;
import leat.model.power.Controller;
import leat.model.power.LightSwitch;
import leat.model.power.Luminaire;
import leat.model.power.Outlet;
import leat.model.power.Panel;
import leat.model.power.StructureFeed;
import leat.model.power.Transformer;
import leat.model.quantity.Units;
import leat.model.site.Phase;

/** Panels, breakers, outlets, lights and their boxes; conduits and conductors by classes of their own. */
final class PowerGoods {

    private final Site site;
    private final PowerYard yard;
    private final TakeoffParameters parameters;
    private final Materials materials;
    private final Cuts cuts;

    PowerGoods(Site site, TakeoffParameters parameters, Materials materials, Cuts cuts) {
        this.site = site;
        yard = new PowerYard(site.yard());
        this.parameters = parameters;
        this.materials = materials;
        this.cuts = cuts;
    }

    void count() {
        Depths depths = new Depths(site, parameters);
        new ConduitGoods(site, parameters, depths, materials, cuts).count();
        new WireGoods(site, yard, parameters, depths, materials).count();
        yard.power().panels().stream().filter(one -> !one.existing()).forEach(this::panel);
        yard.power().circuits().forEach(this::breaker);
        yard.power().outlets().forEach(this::outlet);
        yard.power().luminaires().forEach(this::luminaire);
        yard.power().switches().forEach(this::lightSwitch);
        yard.power().feeds().forEach(this::feed);
        yard.power().controllers().forEach(this::controller);
        yard.power().transformers().forEach(this::transformer);
    }

    private void panel(Panel panel) {
        device(panel.phase(), "panel " + Units.write(panel.rating(), site.yard().units()), panel.id(), "new");
    }

    private void breaker(Circuit circuit) {
        if (yard.power().supplyOf(circuit) instanceof Transformer transformer) {
            fuse(circuit, transformer);
            return;
        }
        int poles = yard.poles(circuit);
        String key = "breaker " + Units.write(circuit.breaker(), site.yard().units()) + ", " + poles
                + (poles == 1 ? " pole" : " poles") + (circuit.groundFault() ? ", ground fault" : "");
        device(circuit.phase(), key, circuit.id(), "in panel " + circuit.supply());
    }

    /** Where a circuit has to be cut off before the transformer cuts itself off. */
    private void fuse(Circuit circuit, Transformer transformer) {
        if (circuit.breaker().compareTo(transformer.mostCurrent(circuit.voltage())) < 0) {
            String key = "fuse " + Units.write(circuit.breaker(), site.yard().units());
            device(circuit.phase(), key, circuit.id(), "at transformer " + transformer.id());
        }
    }

    private void outlet(Outlet outlet) {
        String key = outlet.groundFault() ? "outlet with ground-fault protection" : "outlet";
        device(outlet.phase(), key, outlet.id(), "one");
        box(outlet.phase(), outlet.id(), "outdoor cover for use in rain");
    }

    private void luminaire(Luminaire luminaire) {
        String power = Units.write(luminaire.power(), site.yard().units());
        if (luminaire.lamp().isPresent()) {
            device(luminaire.phase(), "low-voltage luminaire " + power, luminaire.id(), "one");
            return;
        }
        String key = "luminaire " + power;
        device(luminaire.phase(), key, luminaire.id(), "one");
        box(luminaire.phase(), luminaire.id(), "");
    }

    private void lightSwitch(LightSwitch lightSwitch) {
        device(lightSwitch.phase(), "switch", lightSwitch.id(), "one");
        box(lightSwitch.phase(), lightSwitch.id(), "outdoor cover for a switch");
    }

    private void feed(StructureFeed feed) {
        String key = "feed disconnect";
        materials.count(
                feed.phase(),
                MaterialKind.ELECTRICAL_DEVICE,
                key,
                "disconnect or small panel where a structure is fed",
                1,
                Subject.of(feed.id()),
                "at structure " + feed.structure());
    }

    private void controller(Controller controller) {
        device(controller.phase(), "controller " + controller.stations() + " stations", controller.id(), "one");
    }

    private void transformer(Transformer transformer) {
        String taps = String.join(
                ", ",
                transformer.taps().stream()
                        .map(tap -> Units.write(tap, site.yard().units()))
                        .toList());
        String rating = Units.write(transformer.rating(), site.yard().units()).replace(" W", " VA");
        device(transformer.phase(), "transformer " + rating + ", " + taps, transformer.id(), "one");
    }

    private void box(Phase phase, Id id, String cover) {
        Subject subject = Subject.of(id);
        materials.count(phase, MaterialKind.ELECTRICAL_BOX, "outdoor box", "outdoor box", 1, subject, "behind it");
        if (!cover.isEmpty()) {
            materials.count(phase, MaterialKind.ELECTRICAL_BOX, cover, cover, 1, subject, "over it");
        }
    }

    private void device(Phase phase, String key, Id id, String why) {
        materials.count(phase, MaterialKind.ELECTRICAL_DEVICE, key, key, 1, Subject.of(id), why);
    }
}
