package leat.model.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.model.fault.InvalidValueException;
import leat.model.geometry.Point;
import leat.model.id.CircuitId;
import leat.model.id.ControllerId;
import leat.model.id.FeedId;
import leat.model.id.LuminaireId;
import leat.model.id.OutletId;
import leat.model.id.SurfaceId;
import leat.model.id.SwitchId;
import leat.model.power.Ahead;
import leat.model.power.Controller;
import leat.model.power.LampSupply;
import leat.model.power.LightSwitch;
import leat.model.power.Luminaire;
import leat.model.power.Outlet;
import leat.model.power.StructureFeed;
import leat.model.quantity.Power;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;

/** An outlet, luminaires, the feed of a structure, or a controller. */
public final class LoadPart extends Part {

    /** Each with the power that the plan reckons with unless it is stated. */
    enum Kind {
        /** 180 VA: NFPA 70, 220.14(I), from memory. */
        OUTLET("outlet", 180),
        LUMINAIRES("luminaires", 10),
        FEED("structure feed", 1_500),
        CONTROLLER("controller", 50);

        private final String label;
        private final Power usual;

        Kind(String label, double usualW) {
            this.label = label;
            this.usual = new Power(usualW);
        }
    }

    private static final int USUAL_STATIONS = 12;

    private final String name;
    private final Kind kind;
    private final List<Place> places;
    private final Fields fields;

    LoadPart(String name, Kind kind, List<Place> places, Fields fields) {
        this.name = name;
        this.kind = kind;
        this.places = places;
        this.fields = fields;
    }

    /** Where it is; left out, in the middle of its structure. */
    public LoadPart at(Place place) {
        return new LoadPart(name, kind, List.of(place), fields);
    }

    /** The circuit that feeds it; left out, it is planned. */
    public LoadPart on(String circuit) {
        return set("on", circuit);
    }

    /** The power that the plan reckons with, for each. */
    public LoadPart draws(Power power) {
        return set("draws", power);
    }

    /** An outlet that protects itself against current that leaks to ground. */
    public LoadPart groundFault() {
        return set("groundFault", true);
    }

    /** Where the switch of the luminaires is; left out, something else turns them on. */
    public LoadPart switchAt(Place place) {
        return set("switchAt", place);
    }

    /** The transformer that feeds the luminaires; left out, they are for the voltage of the panel. */
    public LoadPart from(String transformer) {
        return set("from", transformer);
    }

    /** The voltages between which lamps of low voltage work; 90 % to 125 % of the lowest tap if left out. */
    public LoadPart works(Voltage least, Voltage most) {
        return set("leastVoltage", least).set("mostVoltage", most);
    }

    /** The structure in which a controller hangs. */
    public LoadPart inside(String structure) {
        return set("inside", structure);
    }

    /** Valves that a controller can serve; 12 if left out. */
    public LoadPart stations(int stations) {
        return set("stations", stations);
    }

    public LoadPart phase(Phase phase) {
        return set("phase", phase);
    }

    /** It comes later, and an empty conduit for it is laid now. */
    public LoadPart conduitNow() {
        return set("phase", Phase.LATER).set("ahead", Ahead.CONDUIT);
    }

    /** It comes later, and its conductors are laid now. */
    public LoadPart wiresNow() {
        return set("phase", Phase.LATER).set("ahead", Ahead.WIRES);
    }

    private LoadPart set(String field, Object value) {
        return new LoadPart(name, kind, places, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        String thing = kind.label + " " + name;
        switch (kind) {
            case OUTLET -> {
                draft.only(thing, fields, "on", "draws", "phase", "ahead", "groundFault");
                draft.power().load(() -> outlet(draft));
            }
            case LUMINAIRES -> {
                draft.only(
                        thing,
                        fields,
                        "on",
                        "draws",
                        "phase",
                        "ahead",
                        "switchAt",
                        "from",
                        "leastVoltage",
                        "mostVoltage");
                luminaires(draft);
            }
            case FEED -> {
                draft.only(thing, fields, "on", "draws", "phase", "ahead");
                draft.power().inside(thing, name);
                draft.power().load(() -> feed(draft));
            }
            case CONTROLLER -> {
                draft.only(thing, fields, "on", "draws", "phase", "ahead", "inside", "stations");
                if (places.isEmpty() && draft.has("controller", name, fields, "inside")) {
                    draft.power().inside(thing, fields.get("inside", String.class));
                }
                draft.power().load(() -> controller(draft));
            }
        }
    }

    private Outlet outlet(YardDraft draft) {
        return new Outlet(
                new OutletId(name),
                places.get(0).in(draft.units()),
                fields.get("groundFault", false, Boolean.class),
                power(),
                circuit(),
                phase(),
                ahead());
    }

    private void luminaires(YardDraft draft) {
        if (places.isEmpty()) {
            draft.complain("luminaires " + name + ": missing a place");
        }
        Optional<SwitchId> lightSwitch = fields.find("switchAt", Place.class).map(place -> {
            SwitchId id = new SwitchId(name);
            draft.power().lightSwitch(new LightSwitch(id, place.in(draft.units()), phase()));
            return id;
        });
        List<Point> points = new ArrayList<>();
        places.forEach(place -> points.add(place.in(draft.units())));
        for (int i = 0; i < points.size(); i++) {
            LuminaireId id = new LuminaireId(name + " " + (i + 1));
            Point at = points.get(i);
            draft.power()
                    .light(() -> new Luminaire(id, at, lightSwitch, power(), lamp(draft), circuit(), phase(), ahead()));
        }
        if (fields.find("from", String.class).isEmpty()
                && fields.find("leastVoltage", Voltage.class).isPresent()) {
            draft.complain("luminaires " + name + ": works without from; name the transformer");
        }
    }

    private Optional<LampSupply> lamp(YardDraft draft) {
        return fields.find("from", String.class)
                .flatMap(one -> draft.power().transformerOf("luminaires " + name, one))
                .map(transformer -> {
                    LampSupply usual = LampSupply.usual(
                            transformer.id(), transformer.taps().get(0));
                    try {
                        return new LampSupply(
                                transformer.id(),
                                fields.get("leastVoltage", usual.least(), Voltage.class),
                                fields.get("mostVoltage", usual.most(), Voltage.class));
                    } catch (InvalidValueException e) {
                        throw e.within("luminaires " + name);
                    }
                });
    }

    private StructureFeed feed(YardDraft draft) {
        return new StructureFeed(
                new FeedId(name), place(draft, name), new SurfaceId(name), power(), circuit(), phase(), ahead());
    }

    private Controller controller(YardDraft draft) {
        Optional<String> inside = fields.find("inside", String.class);
        return new Controller(
                new ControllerId(name),
                place(draft, inside.orElse(name)),
                inside.map(SurfaceId::new),
                fields.get("stations", USUAL_STATIONS, Integer.class),
                power(),
                circuit(),
                phase(),
                ahead());
    }

    private Point place(YardDraft draft, String structure) {
        return places.isEmpty()
                ? draft.power().middleOf(structure)
                : places.get(0).in(draft.units());
    }

    private Power power() {
        return fields.get("draws", kind.usual, Power.class);
    }

    private Optional<CircuitId> circuit() {
        return fields.find("on", String.class).map(CircuitId::new);
    }

    private Phase phase() {
        return fields.get("phase", Phase.NOW, Phase.class);
    }

    private Ahead ahead() {
        return fields.get("ahead", Ahead.NOTHING, Ahead.class);
    }
}
