package leat.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import leat.model.id.CircuitId;
import leat.model.id.ControllerId;
import leat.model.id.FeedId;
import leat.model.id.LuminaireId;
import leat.model.id.OutletId;
import leat.model.id.PanelId;
import leat.model.id.SupplyId;
import leat.model.id.SurfaceId;
import leat.model.id.SwitchId;
import leat.model.id.TransformerId;
import leat.model.power.Ahead;
import leat.model.power.Circuit;
import leat.model.power.CodeFamily;
import leat.model.power.Controller;
import leat.model.power.LightSwitch;
import leat.model.power.Load;
import leat.model.power.Luminaire;
import leat.model.power.Outlet;
import leat.model.power.Panel;
import leat.model.power.PowerSystem;
import leat.model.power.StructureFeed;
import leat.model.power.WiringMethod;
import leat.model.quantity.Count;
import leat.model.quantity.Current;
import leat.model.quantity.Dimension;
import leat.model.quantity.Power;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;

/** The section {@code power}: panels, circuits, loads, conduits, cables. */
final class PowerSection {

    private final Places places;
    private final CableFields cables;
    private final TransformerFields transformers;

    PowerSection(Places places) {
        this.places = places;
        this.cables = new CableFields(places);
        this.transformers = new TransformerFields(places);
    }

    static Map<String, Object> written(PowerSystem power, UnitSystem units) {
        FieldWriter out = new FieldWriter(units);
        power.code().ifPresent(code -> out.word("code", code));
        return out.list("panels", Lists.map(power.panels(), one -> panel(one, units)))
                .list("circuits", Lists.map(power.circuits(), one -> circuit(one, units)))
                .list("outlets", Lists.map(power.outlets(), one -> outlet(one, units)))
                .list("luminaires", Lists.map(power.luminaires(), one -> luminaire(one, units)))
                .list("switches", Lists.map(power.switches(), one -> lightSwitch(one, units)))
                .list("feeds", Lists.map(power.feeds(), one -> feed(one, units)))
                .list("controllers", Lists.map(power.controllers(), one -> controller(one, units)))
                .list("transformers", Lists.map(power.transformers(), one -> TransformerFields.written(one, units)))
                .list("conduits", Lists.map(power.conduits(), one -> CableFields.conduit(one, units)))
                .list("cables", Lists.map(power.powerCables(), one -> CableFields.powerCable(one, units)))
                .list("valveCables", Lists.map(power.valveCables(), one -> CableFields.valveCable(one, units)))
                .fields();
    }

    PowerSystem read(Json json) {
        FieldReader in = FieldReader.of(
                json,
                "power section",
                places,
                "code",
                "panels",
                "circuits",
                "outlets",
                "luminaires",
                "switches",
                "feeds",
                "controllers",
                "transformers",
                "conduits",
                "cables",
                "valveCables");
        in.knownAs("power");
        return in.made(() -> new PowerSystem(
                in.has("code") ? Optional.of(in.word("code", CodeFamily.class)) : Optional.empty(),
                in.list("panels", this::panel),
                in.list("circuits", this::circuit),
                in.list("outlets", this::outlet),
                in.list("luminaires", this::luminaire),
                in.list("switches", this::lightSwitch),
                in.list("feeds", this::feed),
                in.list("controllers", this::controller),
                in.list("transformers", transformers::transformer),
                in.list("conduits", cables::conduit),
                in.list("cables", cables::powerCable),
                in.list("valveCables", cables::valveCable)));
    }

    private static Map<String, Object> panel(Panel panel, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", panel.id())
                .point("at", panel.at())
                .quantity("voltage", panel.voltage())
                .quantity("rating", panel.rating())
                .number("spareWays", panel.spareWays().value())
                .id("inside", panel.inside())
                .flag("existing", panel.existing())
                .word("phase", panel.phase(), Phase.NOW)
                .fields();
    }

    private Panel panel(Json json) {
        FieldReader in = FieldReader.of(
                json, "panel", places, "id", "at", "voltage", "rating", "spareWays", "inside", "existing", "phase");
        return in.named(() -> new Panel(
                in.id("id", PanelId::new),
                in.point("at"),
                in.quantity("voltage", Dimension.VOLTAGE, Voltage.class),
                in.quantity("rating", Dimension.CURRENT, Current.class),
                Count.of(in.number("spareWays")),
                in.optionalId("inside", SurfaceId::new),
                in.flag("existing"),
                in.word("phase", Phase.class, Phase.NOW)));
    }

    private static Map<String, Object> circuit(Circuit circuit, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", circuit.id())
                .id(circuit.isLowVoltage() ? "transformer" : "panel", circuit.supply())
                .quantity("breaker", circuit.breaker())
                .quantity("voltage", circuit.voltage())
                .number("liveWires", circuit.liveWires())
                .flag("groundFault", circuit.groundFault())
                .word("method", circuit.method())
                .word("phase", circuit.phase(), Phase.NOW)
                .fields();
    }

    private Circuit circuit(Json json) {
        FieldReader in = FieldReader.of(
                json,
                "circuit",
                places,
                "id",
                "panel",
                "transformer",
                "breaker",
                "voltage",
                "liveWires",
                "groundFault",
                "method",
                "phase");
        return in.named(() -> new Circuit(
                in.id("id", CircuitId::new),
                supply(in),
                in.quantity("breaker", Dimension.CURRENT, Current.class),
                in.quantity("voltage", Dimension.VOLTAGE, Voltage.class),
                in.whole("liveWires"),
                in.flag("groundFault"),
                in.word("method", WiringMethod.class),
                in.word("phase", Phase.class, Phase.NOW)));
    }

    /** A circuit starts from one of both. */
    private static SupplyId supply(FieldReader in) {
        if (!in.has("transformer")) {
            return in.id("panel", PanelId::new);
        }
        if (in.has("panel")) {
            throw in.spot("transformer").fault("a circuit starts from one thing; this is a second one");
        }
        return in.id("transformer", TransformerId::new);
    }

    /** The fields that all loads have. */
    private static FieldWriter load(Load load, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", load.id())
                .point("at", load.at())
                .quantity("power", load.power())
                .id("circuit", load.circuit())
                .word("phase", load.phase(), Phase.NOW)
                .word("ahead", load.ahead(), Ahead.NOTHING);
    }

    private <T> T load(Json json, String kind, Function<FieldReader, T> maker, String... more) {
        Map<String, Boolean> fields = new LinkedHashMap<>();
        List.of("id", "at", "power", "circuit", "phase", "ahead").forEach(one -> fields.put(one, true));
        List.of(more).forEach(one -> fields.put(one, true));
        FieldReader in = FieldReader.of(json, kind, places, fields.keySet().toArray(String[]::new));
        return in.named(() -> maker.apply(in));
    }

    private static Power power(FieldReader in) {
        return in.quantity("power", Dimension.POWER, Power.class);
    }

    private static Phase phase(FieldReader in) {
        return in.word("phase", Phase.class, Phase.NOW);
    }

    private static Ahead ahead(FieldReader in) {
        return in.word("ahead", Ahead.class, Ahead.NOTHING);
    }

    private static Map<String, Object> outlet(Outlet outlet, UnitSystem units) {
        return load(outlet, units).flag("groundFault", outlet.groundFault()).fields();
    }

    private Outlet outlet(Json json) {
        return load(
                json,
                "outlet",
                in -> new Outlet(
                        in.id("id", OutletId::new),
                        in.point("at"),
                        in.flag("groundFault"),
                        power(in),
                        in.optionalId("circuit", CircuitId::new),
                        phase(in),
                        ahead(in)),
                "groundFault");
    }

    private static Map<String, Object> luminaire(Luminaire luminaire, UnitSystem units) {
        FieldWriter out = load(luminaire, units).id("switch", luminaire.lightSwitch());
        luminaire.lamp().ifPresent(lamp -> out.object("lamp", TransformerFields.lamp(lamp, units)));
        return out.fields();
    }

    private Luminaire luminaire(Json json) {
        return load(
                json,
                "luminaire",
                in -> new Luminaire(
                        in.id("id", LuminaireId::new),
                        in.point("at"),
                        in.optionalId("switch", SwitchId::new),
                        power(in),
                        in.optional("lamp", transformers::lamp),
                        in.optionalId("circuit", CircuitId::new),
                        phase(in),
                        ahead(in)),
                "switch",
                "lamp");
    }

    private static Map<String, Object> lightSwitch(LightSwitch one, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", one.id())
                .point("at", one.at())
                .word("phase", one.phase(), Phase.NOW)
                .fields();
    }

    private LightSwitch lightSwitch(Json json) {
        FieldReader in = FieldReader.of(json, "switch", places, "id", "at", "phase");
        return in.named(() -> new LightSwitch(in.id("id", SwitchId::new), in.point("at"), phase(in)));
    }

    private static Map<String, Object> feed(StructureFeed feed, UnitSystem units) {
        return load(feed, units).id("structure", feed.structure()).fields();
    }

    private StructureFeed feed(Json json) {
        return load(
                json,
                "structure feed",
                in -> new StructureFeed(
                        in.id("id", FeedId::new),
                        in.point("at"),
                        in.id("structure", SurfaceId::new),
                        power(in),
                        in.optionalId("circuit", CircuitId::new),
                        phase(in),
                        ahead(in)),
                "structure");
    }

    private static Map<String, Object> controller(Controller controller, UnitSystem units) {
        return load(controller, units)
                .id("inside", controller.inside())
                .number("stations", controller.stations())
                .fields();
    }

    private Controller controller(Json json) {
        return load(
                json,
                "controller",
                in -> new Controller(
                        in.id("id", ControllerId::new),
                        in.point("at"),
                        in.optionalId("inside", SurfaceId::new),
                        in.whole("stations"),
                        power(in),
                        in.optionalId("circuit", CircuitId::new),
                        phase(in),
                        ahead(in)),
                "inside",
                "stations");
    }
}
