package leat.model.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.CircuitId;
import leat.model.id.OutletId;
import leat.model.id.SurfaceId;
import leat.model.id.TransformerId;
import leat.model.power.Ahead;
import leat.model.power.Transformer;
import leat.model.quantity.Power;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;

/** A transformer that feeds lamps of low voltage. */
public final class TransformerPart extends Part {

    private static final Voltage USUAL_TAP = new Voltage(12);

    private final String name;
    private final Fields fields;

    TransformerPart(String name, Fields fields) {
        this.name = name;
        this.fields = fields;
    }

    /** Where it is; left out, at its outlet or in the middle of its structure. */
    public TransformerPart at(Place place) {
        return set("at", place);
    }

    /** Volt-amperes that it may give for ever. */
    public TransformerPart rating(Power voltAmperes) {
        return set("rating", voltAmperes);
    }

    /** Voltages that it gives; 12 V alone if left out. */
    public TransformerPart taps(Voltage... voltages) {
        return set("taps", Require.entries("transformer " + name, "taps", Arrays.asList(voltages)));
    }

    /** The outlet that it is plugged into; left out, a circuit feeds it. */
    public TransformerPart pluggedInto(String outlet) {
        return set("pluggedInto", outlet);
    }

    /** The circuit that feeds it; left out, it is planned. */
    public TransformerPart on(String circuit) {
        return set("on", circuit);
    }

    /** The structure in which it stands. */
    public TransformerPart inside(String structure) {
        return set("inside", structure);
    }

    public TransformerPart phase(Phase phase) {
        return set("phase", phase);
    }

    /** It comes later, and an empty conduit for it is laid now. */
    public TransformerPart conduitNow() {
        return set("phase", Phase.LATER).set("ahead", Ahead.CONDUIT);
    }

    /** It comes later, and its conductors are laid now. */
    public TransformerPart wiresNow() {
        return set("phase", Phase.LATER).set("ahead", Ahead.WIRES);
    }

    private TransformerPart set(String field, Object value) {
        return new TransformerPart(name, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        if (!draft.has("transformer", name, fields, "rating")) {
            return;
        }
        fields.find("inside", String.class).ifPresent(one -> draft.power().inside("transformer " + name, one));
        draft.power().transformer(() -> place(draft).map(this::made));
    }

    private Transformer made(Point at) {
        return new Transformer(
                new TransformerId(name),
                at,
                fields.find("inside", String.class).map(SurfaceId::new),
                fields.get("rating", Power.class),
                ((List<?>) fields.get("taps", List.of(USUAL_TAP), List.class))
                        .stream().map(Voltage.class::cast).toList(),
                fields.find("pluggedInto", String.class).map(OutletId::new),
                fields.find("on", String.class).map(CircuitId::new),
                fields.get("phase", Phase.NOW, Phase.class),
                fields.get("ahead", Ahead.NOTHING, Ahead.class));
    }

    private Optional<Point> place(YardDraft draft) {
        Optional<Point> ofOutlet = fields.find("pluggedInto", String.class)
                .flatMap(outlet -> draft.power().outlet("transformer " + name, outlet));
        Optional<Point> stated = fields.find("at", Place.class).map(place -> place.in(draft.units()));
        Optional<Point> place = stated.or(() -> ofOutlet)
                .or(() -> fields.find("inside", String.class)
                        .map(structure -> draft.power().middleOf(structure)));
        if (place.isEmpty() && fields.find("pluggedInto", String.class).isEmpty()) {
            draft.complain("transformer " + name + ": missing a place, an outlet or a structure");
        }
        return place;
    }
}
