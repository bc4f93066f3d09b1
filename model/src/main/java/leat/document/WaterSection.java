package leat.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leat.model.id.BackflowId;
import leat.model.id.BibId;
import leat.model.id.HeadId;
import leat.model.id.ManifoldId;
import leat.model.id.PipeId;
import leat.model.id.ValveId;
import leat.model.id.ZoneId;
import leat.model.quantity.Dimension;
import leat.model.quantity.Flow;
import leat.model.quantity.UnitSystem;
import leat.model.site.Phase;
import leat.model.water.BackflowPreventer;
import leat.model.water.HoseBib;
import leat.model.water.Lateral;
import leat.model.water.Main;
import leat.model.water.Manifold;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;
import leat.model.water.ZoneValve;

/** The section {@code water}: sources, main, manifolds, heads, zones, laterals, hose bibs. */
final class WaterSection {

    private final Places places;
    private final SourceFields sources;
    private final PipeFields pipes;
    private final HeadFields heads;

    WaterSection(Places places) {
        this.places = places;
        this.sources = new SourceFields(places);
        this.pipes = new PipeFields(places);
        this.heads = new HeadFields(places);
    }

    static Map<String, Object> written(WaterSystem water, UnitSystem units) {
        return new FieldWriter(units)
                .list("sources", Lists.map(water.sources(), one -> SourceFields.written(one, units)))
                .list("backflows", Lists.map(water.backflows(), one -> backflow(one, units)))
                .list("main", Lists.map(water.main().runs(), one -> PipeFields.written(one, units)))
                .list("manifolds", Lists.map(water.manifolds(), one -> manifold(one, units)))
                .list("heads", Lists.map(water.heads(), one -> HeadFields.written(one, units)))
                .list("zones", Lists.map(water.zones(), one -> zone(one, units)))
                .list("laterals", Lists.map(water.laterals(), one -> lateral(one, units)))
                .list("bibs", Lists.map(water.bibs(), one -> bib(one, units)))
                .fields();
    }

    WaterSystem read(Json json) {
        FieldReader in = FieldReader.of(
                json,
                "water section",
                places,
                "sources",
                "backflows",
                "main",
                "manifolds",
                "heads",
                "zones",
                "laterals",
                "bibs");
        return in.made(() -> new WaterSystem(
                in.list("sources", sources::read),
                in.list("backflows", this::backflow),
                new Main(in.list("main", pipes::read)),
                in.list("manifolds", this::manifold),
                in.list("heads", heads::read),
                in.list("zones", this::zone),
                in.list("laterals", this::lateral),
                in.list("bibs", this::bib)));
    }

    private static Map<String, Object> backflow(BackflowPreventer backflow, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", backflow.id())
                .id("on", backflow.on())
                .text("device", backflow.device())
                .quantity("height", backflow.height())
                .fields();
    }

    private BackflowPreventer backflow(Json json) {
        FieldReader in = FieldReader.of(json, "backflow preventer", places, "id", "on", "device", "height");
        return in.named(() -> new BackflowPreventer(
                in.id("id", BackflowId::new), in.id("on", PipeId::new), in.text("device"), in.length("height")));
    }

    private static Map<String, Object> manifold(Manifold manifold, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", manifold.id())
                .point("at", manifold.at())
                .id("on", manifold.on())
                .list(
                        "valves",
                        Lists.map(
                                manifold.valves(),
                                valve -> new FieldWriter(units)
                                        .id("id", valve.id())
                                        .text("device", valve.device())
                                        .flag("spare", valve.spare())
                                        .fields()))
                .fields();
    }

    private Manifold manifold(Json json) {
        FieldReader in = FieldReader.of(json, "manifold", places, "id", "at", "on", "valves");
        return in.named(() -> new Manifold(
                in.id("id", ManifoldId::new),
                in.point("at"),
                in.optionalId("on", PipeId::new),
                in.list("valves", this::valve)));
    }

    private ZoneValve valve(Json json) {
        FieldReader in = FieldReader.of(json, "valve", places, "id", "device", "spare");
        return in.named(() -> new ZoneValve(in.id("id", ValveId::new), in.text("device"), in.flag("spare")));
    }

    private static Map<String, Object> zone(Zone zone, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", zone.id())
                .id("valve", zone.valve())
                .ids("heads", zone.heads())
                .word("phase", zone.phase(), Phase.NOW)
                .fields();
    }

    private Zone zone(Json json) {
        FieldReader in = FieldReader.of(json, "zone", places, "id", "valve", "heads", "phase");
        return in.named(() -> new Zone(
                in.id("id", ZoneId::new),
                in.id("valve", ValveId::new),
                in.ids("heads", HeadId::new),
                in.word("phase", Phase.class, Phase.NOW)));
    }

    private static Map<String, Object> lateral(Lateral lateral, UnitSystem units) {
        Map<String, Object> heads = new LinkedHashMap<>();
        lateral.heads().forEach((head, pipe) -> heads.put(head.name(), pipe.name()));
        return new FieldWriter(units)
                .id("zone", lateral.zone())
                .list("pipes", Lists.map(lateral.runs(), one -> PipeFields.written(one, units)))
                .object("heads", heads)
                .fields();
    }

    private Lateral lateral(Json json) {
        FieldReader in = FieldReader.of(json, "lateral", places, "zone", "pipes", "heads");
        ZoneId zone = in.id("zone", ZoneId::new);
        in.knownAs("lateral of " + zone);
        List<PipeRun> runs = in.list("pipes", pipes::read);
        return in.made(() -> new Lateral(zone, runs, in.idsById("heads", HeadId::new, PipeId::new)));
    }

    private static Map<String, Object> bib(HoseBib bib, UnitSystem units) {
        return new FieldWriter(units)
                .id("id", bib.id())
                .point("at", bib.at())
                .id("on", bib.on())
                .quantity("drawn", bib.drawn())
                .flag("vacuumBreaker", bib.vacuumBreaker())
                .word("phase", bib.phase(), Phase.NOW)
                .fields();
    }

    private HoseBib bib(Json json) {
        FieldReader in = FieldReader.of(json, "hose bib", places, "id", "at", "on", "drawn", "vacuumBreaker", "phase");
        return in.named(() -> new HoseBib(
                in.id("id", BibId::new),
                in.point("at"),
                in.optionalId("on", PipeId::new),
                in.quantity("drawn", Dimension.FLOW, Flow.class),
                in.flag("vacuumBreaker"),
                in.word("phase", Phase.class, Phase.NOW)));
    }
}
