package leat.document;

import java.util.List;
import java.util.Map;
import leat.model.catalog.Additions;
import leat.model.catalog.FlowRule;
import leat.model.catalog.HeadFamily;
import leat.model.catalog.HeadShape;
import leat.model.catalog.Jet;
import leat.model.catalog.PressureRange;
import leat.model.catalog.RuleLimit;
import leat.model.catalog.Rules;
import leat.model.finding.Citation;
import leat.model.finding.Standing;
import leat.model.quantity.Angle;
import leat.model.quantity.Dimension;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;

/** The section {@code additions}: heads and limits of the yard's own. */
final class AdditionsSection {

    private final Places places;
    private final String edition;

    /** @param edition of the yard; its rules say what quantity a limit is */
    AdditionsSection(Places places, String edition) {
        this.places = places;
        this.edition = edition;
    }

    static Map<String, Object> written(Additions additions, UnitSystem units) {
        return new FieldWriter(units)
                .list("heads", Lists.map(additions.heads(), one -> family(one, units)))
                .list(
                        "limits",
                        Lists.map(
                                additions.limits(),
                                one -> new FieldWriter(units)
                                        .text("rule", one.rule())
                                        .quantity("limit", one.limit())
                                        .fields()))
                .fields();
    }

    Additions read(Json json) {
        FieldReader in = FieldReader.of(json, "additions section", places, "heads", "limits");
        return in.made(() -> new Additions(in.list("heads", this::family), limits(in)));
    }

    private List<RuleLimit> limits(FieldReader in) {
        if (!in.has("limits")) {
            return List.of();
        }
        Rules rules = RuleTable.read(edition, UnitSystem.US);
        return in.list("limits", json -> limit(json, rules));
    }

    private RuleLimit limit(Json json, Rules rules) {
        FieldReader in = FieldReader.of(json, "limit", places, "rule", "limit");
        String rule = in.text("rule");
        Dimension dimension =
                in.spot("rule").guard(() -> rules.get(rule).limit().dimension());
        in.knownAs("rule limit " + rule);
        return in.made(() -> new RuleLimit(rule, in.quantity("limit", dimension, Quantity.class)));
    }

    private static Map<String, Object> family(HeadFamily family, UnitSystem units) {
        Jet jet = family.jet();
        return new FieldWriter(units)
                .text("key", family.key())
                .word("kind", family.shape())
                .object(
                        "jet",
                        new FieldWriter(units)
                                .quantity("radius", jet.radius())
                                .quantity("leastRadius", jet.leastRadius())
                                .quantity("flow", jet.flow())
                                .word("rule", jet.rule())
                                .number("flowExponent", jet.flowExponent())
                                .number("radiusExponent", jet.radiusExponent())
                                .text("profile", jet.profile()))
                .object(
                        "pressure",
                        new FieldWriter(units)
                                .quantity("least", family.pressure().least())
                                .quantity("reference", family.pressure().reference())
                                .quantity("most", family.pressure().most()))
                .quantity("leastArc", family.leastArc())
                .quantity("mostArc", family.mostArc())
                .quantity("popUp", family.popUp())
                .object(
                        "citation",
                        new FieldWriter(units)
                                .text("text", family.citation().text())
                                .word("standing", family.citation().standing()))
                .fields();
    }

    private HeadFamily family(Json json) {
        FieldReader in = FieldReader.of(
                json,
                "head family",
                places,
                "key",
                "kind",
                "jet",
                "pressure",
                "leastArc",
                "mostArc",
                "popUp",
                "citation");
        return in.named(() -> new HeadFamily(
                in.text("key"),
                in.word("kind", HeadShape.class),
                in.object("jet", this::jet),
                in.object("pressure", this::pressure),
                in.quantity("leastArc", Dimension.ANGLE, Angle.class),
                in.quantity("mostArc", Dimension.ANGLE, Angle.class),
                in.length("popUp"),
                in.object("citation", this::citation)));
    }

    private Jet jet(Json json) {
        FieldReader in = FieldReader.of(
                json,
                "jet",
                places,
                "radius",
                "leastRadius",
                "flow",
                "rule",
                "flowExponent",
                "radiusExponent",
                "profile");
        return in.made(() -> new Jet(
                in.length("radius"),
                in.length("leastRadius"),
                in.quantity("flow", Dimension.FLOW, Flow.class),
                in.word("rule", FlowRule.class),
                in.number("flowExponent"),
                in.number("radiusExponent"),
                in.text("profile")));
    }

    private PressureRange pressure(Json json) {
        FieldReader in = FieldReader.of(json, "pressure range", places, "least", "reference", "most");
        return in.made(() -> new PressureRange(
                in.quantity("least", Dimension.PRESSURE, Pressure.class),
                in.quantity("reference", Dimension.PRESSURE, Pressure.class),
                in.quantity("most", Dimension.PRESSURE, Pressure.class)));
    }

    private Citation citation(Json json) {
        FieldReader in = FieldReader.of(json, "citation", places, "text", "standing");
        return new Citation(in.text("text"), in.word("standing", Standing.class));
    }
}
