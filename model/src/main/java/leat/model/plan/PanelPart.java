package leat.model.plan;

import leat.model.id.PanelId;
import leat.model.id.SurfaceId;
import leat.model.power.CodeFamily;
import leat.model.power.Panel;
import leat.model.quantity.Count;
import leat.model.quantity.Current;
import leat.model.quantity.Voltage;
import leat.model.site.Phase;

/** A panel from which circuits start. It is there already unless it is said to be new. */
public final class PanelPart extends Part {

    private static final Current USUAL_RATING = new Current(100);

    private final String name;
    private final Place at;
    private final Fields fields;

    PanelPart(String name, Place at, Fields fields) {
        this.name = name;
        this.at = at;
        this.fields = fields;
    }

    /** Free places for breakers; none if left out. */
    public PanelPart spareWays(double ways) {
        return set("spareWays", Count.of(ways));
    }

    /** Between a live conductor and neutral; 120 V or 230 V by the family of codes if left out. */
    public PanelPart voltage(Voltage voltage) {
        return set("voltage", voltage);
    }

    /** Of its main breaker; 100 A if left out. */
    public PanelPart rating(Current rating) {
        return set("rating", rating);
    }

    /** The structure in which it stands. */
    public PanelPart inside(String structure) {
        return set("inside", structure);
    }

    /** It is built in these works. */
    public PanelPart isNew() {
        return set("existing", false);
    }

    public PanelPart phase(Phase phase) {
        return set("phase", phase);
    }

    private PanelPart set(String field, Object value) {
        return new PanelPart(name, at, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        draft.power()
                .panel(code -> new Panel(
                        new PanelId(name),
                        at.in(draft.units()),
                        fields.get("voltage", usualVoltage(code), Voltage.class),
                        fields.get("rating", USUAL_RATING, Current.class),
                        fields.get("spareWays", Count.ZERO, Count.class),
                        fields.find("inside", String.class).map(SurfaceId::new),
                        fields.get("existing", true, Boolean.class),
                        fields.get("phase", Phase.NOW, Phase.class)));
    }

    private static Voltage usualVoltage(CodeFamily code) {
        return new Voltage(code == CodeFamily.NFPA_70 ? 120 : 230);
    }
}
