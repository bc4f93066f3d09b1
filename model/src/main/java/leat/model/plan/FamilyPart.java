package leat.model.plan;

import leat.model.catalog.FlowRule;
import leat.model.catalog.HeadFamily;
import leat.model.catalog.HeadShape;
import leat.model.catalog.Jet;
import leat.model.catalog.PressureRange;
import leat.model.finding.Citation;
import leat.model.finding.Standing;
import leat.model.quantity.Angle;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;
import leat.model.quantity.PrecipitationRate;
import leat.model.quantity.Pressure;

/** A family of heads of the yard's own, such as from a maker's sheet. */
public final class FamilyPart extends Part {

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
        return set("flow", flow).set("rule", FlowRule.FIXED);
    }

    /** Flow at full circle and reference pressure; less in proportion to the arc. */
    public FamilyPart flowAtFullCircle(Flow flow) {
        return set("flow", flow).set("rule", FlowRule.BY_ARC);
    }

    /** The same depth rate for each arc and radius, counted over squares with sides of the radius. */
    public FamilyPart precipitation(PrecipitationRate rate) {
        return set("precipitation", rate).set("rule", FlowRule.BY_AREA);
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
        if (!draft.has("head family " + key, fields, "radius", "pressure", "rule")) {
            return;
        }
        Length radius = fields.get("radius", Length.class);
        Jet jet = new Jet(
                radius,
                fields.get("leastRadius", Length.class),
                flow(radius),
                fields.get("rule", FlowRule.class),
                0.5,
                shape == HeadShape.ROTOR ? 0.3 : 0.25, // as the standing table has them: common practice, no source
                fields.get("profile", "wedge", String.class));
        draft.family(new HeadFamily(
                key,
                shape,
                jet,
                fields.get("pressure", PressureRange.class),
                fields.get("leastArc", new Angle(45), Angle.class),
                fields.get("mostArc", new Angle(360), Angle.class),
                fields.get("popUp", Length.millimetres(100), Length.class),
                new Citation(fields.get("source", "stated by the user", String.class), Standing.STATED)));
    }

    private Flow flow(Length radius) {
        return fields.find("precipitation", PrecipitationRate.class)
                .map(rate -> new Flow(rate.si() * radius.metres() * radius.metres()))
                .orElseGet(() -> fields.get("flow", Flow.class));
    }
}
