package leat.document;

import java.util.Map;
import java.util.Optional;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.ControllerId;
import leat.model.id.FeedId;
import leat.model.id.LuminaireId;
import leat.model.id.ManifoldId;
import leat.model.id.OutletId;
import leat.model.id.PanelId;
import leat.model.id.SwitchId;
import leat.model.id.TransformerId;
import leat.model.id.WireEndId;
import leat.model.power.Conduit;
import leat.model.power.PowerCable;
import leat.model.power.ValveCable;
import leat.model.power.WireGroup;
import leat.model.quantity.UnitSystem;
import leat.model.site.Phase;

/** How conduits and cables stand in a document. */
final class CableFields {

    /** What a cable may end at, by the field that names it. */
    private enum End {
        PANEL,
        SWITCH,
        OUTLET,
        LUMINAIRE,
        FEED,
        CONTROLLER,
        TRANSFORMER;

        static End of(WireEndId id) {
            if (id instanceof PanelId) {
                return PANEL;
            }
            if (id instanceof SwitchId) {
                return SWITCH;
            }
            if (id instanceof OutletId) {
                return OUTLET;
            }
            if (id instanceof LuminaireId) {
                return LUMINAIRE;
            }
            if (id instanceof TransformerId) {
                return TRANSFORMER;
            }
            return id instanceof FeedId ? FEED : CONTROLLER;
        }

        WireEndId named(String name) {
            return switch (this) {
                case PANEL -> new PanelId(name);
                case SWITCH -> new SwitchId(name);
                case OUTLET -> new OutletId(name);
                case LUMINAIRE -> new LuminaireId(name);
                case FEED -> new FeedId(name);
                case CONTROLLER -> new ControllerId(name);
                case TRANSFORMER -> new TransformerId(name);
            };
        }
    }

    private final Places places;

    CableFields(Places places) {
        this.places = places;
    }

    static Map<String, Object> conduit(Conduit conduit, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", conduit.id())
                .route("route", conduit.route())
                .text("series", conduit.series())
                .text("size", conduit.size())
                .flag("existing", conduit.existing())
                .list("occupied", Lists.map(conduit.occupied(), one -> wires(one, units)))
                .word("phase", conduit.phase(), Phase.NOW)
                .fields();
    }

    Conduit conduit(Json json) {
        FieldReader in = FieldReader.of(
                json, "conduit", places, "id", "route", "series", "size", "existing", "occupied", "phase");
        return in.named(() -> new Conduit(
                in.id("id", ConduitId::new),
                in.route("route"),
                in.text("series"),
                in.optionalText("size"),
                in.flag("existing"),
                in.list("occupied", this::wires),
                in.word("phase", Phase.class, Phase.NOW)));
    }

    private static Map<String, Object> wires(WireGroup wires, UnitSystem units) {
        return new FieldWriter(units)
                .text("size", wires.size())
                .number("count", wires.count())
                .fields();
    }

    private WireGroup wires(Json json) {
        FieldReader in = FieldReader.of(json, "wires", places, "size", "count");
        return in.made(() -> new WireGroup(in.text("size"), in.whole("count")));
    }

    static Map<String, Object> powerCable(PowerCable cable, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", cable.id())
                .id("circuit", cable.circuit())
                .object("from", end(cable.from()))
                .object("to", end(cable.to()))
                .route("route", cable.route())
                .ids("conduits", cable.conduits())
                .text("conductor", cable.conductor())
                .flag("existing", cable.existing())
                .word("phase", cable.phase(), Phase.NOW)
                .fields();
    }

    PowerCable powerCable(Json json) {
        FieldReader in = FieldReader.of(
                json,
                "cable",
                places,
                "id",
                "circuit",
                "from",
                "to",
                "route",
                "conduits",
                "conductor",
                "existing",
                "phase");
        return in.named(() -> new PowerCable(
                in.id("id", CableId::new),
                in.id("circuit", CircuitId::new),
                in.object("from", this::end),
                in.object("to", this::end),
                in.route("route"),
                in.ids("conduits", ConduitId::new),
                in.optionalText("conductor"),
                in.flag("existing"),
                in.word("phase", Phase.class, Phase.NOW)));
    }

    private static Map<String, Object> end(WireEndId id) {
        return Map.of(Words.of(End.of(id)), id.name());
    }

    private WireEndId end(Json json) {
        FieldReader in = FieldReader.of(
                json, "end of a cable", places, Words.all(End.class).toArray(String[]::new));
        Optional<WireEndId> found = Optional.empty();
        for (End end : End.values()) {
            if (in.has(Words.of(end))) {
                if (found.isPresent()) {
                    throw in.spot(Words.of(end)).fault("a cable ends at one thing; this is a second one");
                }
                found = Optional.of(in.id(Words.of(end), end::named));
            }
        }
        return found.orElseThrow(() ->
                json.spot().fault("missing; one of these must stand here: " + String.join(", ", Words.all(End.class))));
    }

    static Map<String, Object> valveCable(ValveCable cable, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", cable.id())
                .id("from", cable.from())
                .id("to", cable.to())
                .route("route", cable.route())
                .ids("conduits", cable.conduits())
                .text("conductor", cable.conductor())
                .number("strands", cable.strands())
                .flag("existing", cable.existing())
                .word("phase", cable.phase(), Phase.NOW)
                .fields();
    }

    ValveCable valveCable(Json json) {
        FieldReader in = FieldReader.of(
                json,
                "cable",
                places,
                "id",
                "from",
                "to",
                "route",
                "conduits",
                "conductor",
                "strands",
                "existing",
                "phase");
        return in.named(() -> new ValveCable(
                in.id("id", CableId::new),
                in.id("from", ControllerId::new),
                in.id("to", ManifoldId::new),
                in.route("route"),
                in.ids("conduits", ConduitId::new),
                in.optionalText("conductor"),
                in.whole("strands"),
                in.flag("existing"),
                in.word("phase", Phase.class, Phase.NOW)));
    }
}
