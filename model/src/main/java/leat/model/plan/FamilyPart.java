package leat.model.plan;

import leat.model.catalog.FlowRule;
import leat.model.catalog.HeadFamily;
import leat.model.catalog.HeadShape;
import leat.model.catalog.Jet;
import leat.model.catalog.PressureRange;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Citation;
import leat.model.finding.Standing;
import leat.model.quantity.Angle;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Pressure;

/**
 * A family of heads of the yard's own, such as from a maker's sheet. Of {@code flow}, {@code flowAtFullCircle} and
 * {@code precipitation} the one that was said last counts.
 */
public final class FamilyPart extends Part {

    /** The flow rule, under the name that a complaint of its lack has to have. */
    private static final String FLOW = "flow or precipitation";

    private final String key;
    private final HeadShape shape;
    private final Fields fields;

    FamilyPart(String key, HeadShape shape, Fields fields) {
        this.key = key;
        this.shape = shape;
        this.fields = fields;
    }

    /** Radius at reference pressure, down to which the builder may turn it. */
    public FamilyPart radius(Length least, Length most) {
        return set("leastRadius", least).set("radius", most);
    }

    /** Flow of the nozzle at reference pressure, whatever the arc. */
    public FamilyPart flow(Flow flow) {
        return set("flow", flow).set(FLOW, FlowRule.FIXED);
    }

    /** Flow at full circle and reference pressure; less in proportion to the arc. */
    public FamilyPart flowAtFullCircle(Flow flow) {
        return set("flow", flow).set(FLOW, FlowRule.BY_ARC);
    }

    /** The same depth rate for each arc and radius, counted over squares with sides of the radius. */
    public FamilyPart precipitation(PrecipitationRate rate) {
        return set("precipitation", rate).set(FLOW, FlowRule.BY_AREA);
    }

    public FamilyPart pressure(Pressure least, Pressure reference, Pressure most) {
        return set("pressure", new PressureRange(least, reference, most));
    }

    /** Degrees of sweep that it can be set to; 45 to 360 if left out. */
    public FamilyPart arcs(double leastDegrees, double mostDegrees) {
        return set("leastArc", new Angle(leastDegrees)).set("mostArc", new Angle(mostDegrees));
    }

    /** Catalogue key of how the depth falls off along the radius; {@code wedge} if left out. */
    public FamilyPart profile(String profile) {
        return set("profile", profile);
    }

    public FamilyPart popUp(Length height) {
        return set("popUp", height);
    }

    /** Where its figures come from. */
    public FamilyPart source(String text) {
        return set("source", text);
    }

    private FamilyPart set(String field, Object value) {
        return new FamilyPart(key, shape, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        if (!draft.has("head family", key, fields, "radius", "pressure", FLOW)) {
            return;
        }
        draft.family(new HeadFamily(
                key,
                shape,
                jet(fields.get(FLOW, FlowRule.class)),
                fields.get("pressure", PressureRange.class),
                fields.get("leastArc", new Angle(45), Angle.class),
                fields.get("mostArc", new Angle(360), Angle.class),
                fields.get("popUp", Length.millimetres(100), Length.class),
                new Citation(fields.get("source", "stated by the user", String.class), Standing.STATED)));
    }

    private Jet jet(FlowRule rule) {
        Length radius = fields.get("radius", Length.class);
        try {
            return new Jet(
                    radius,
                    fields.get("leastRadius", Length.class),
                    rule == FlowRule.BY_AREA ? flowOverSquare(radius) : fields.get("flow", Flow.class),
                    rule,
                    0.5,
                    shape == HeadShape.ROTOR ? 0.3 : 0.25, // as the standing table has them: common practice, no source
                    fields.get("profile", "wedge", String.class));
        } catch (InvalidValueException e) {
            throw e.within("head family " + key);
        }
    }

    /** Full circles at the corners of a square with sides of the radius: each waters one such square. */
    private Flow flowOverSquare(Length radius) {
        double rate = fields.get("precipitation", PrecipitationRate.class).metresPerSecond();
        return new Flow(rate * radius.metres() * radius.metres());
    }
}
