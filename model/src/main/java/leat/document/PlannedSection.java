package leat.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import leat.model.id.CableId;
import leat.model.id.CircuitId;
import leat.model.id.ConduitId;
import leat.model.id.ControllerId;
import leat.model.id.FeedId;
import leat.model.id.HeadId;
import leat.model.id.Id;
import leat.model.id.LuminaireId;
import leat.model.id.OutletId;
import leat.model.id.PipeId;
import leat.model.id.SegmentId;
import leat.model.id.TransformerId;
import leat.model.id.ValveId;
import leat.model.id.ZoneId;
import leat.model.plan.Aspect;
import leat.model.plan.Planned;

/** The section {@code planned}: by aspect, the names of the things on which a stage may change it. */
final class PlannedSection {

    /** What may be planned, by the name of its list. */
    private enum Kind {
        HEADS(HeadId.class, HeadId::new),
        ZONES(ZoneId.class, ZoneId::new),
        VALVES(ValveId.class, ValveId::new),
        PIPES(PipeId.class, PipeId::new),
        CIRCUITS(CircuitId.class, CircuitId::new),
        OUTLETS(OutletId.class, OutletId::new),
        LUMINAIRES(LuminaireId.class, LuminaireId::new),
        FEEDS(FeedId.class, FeedId::new),
        CONTROLLERS(ControllerId.class, ControllerId::new),
        TRANSFORMERS(TransformerId.class, TransformerId::new),
        CONDUITS(ConduitId.class, ConduitId::new),
        CABLES(CableId.class, CableId::new),
        TRENCHES(SegmentId.class, SegmentId::new);

        private final Class<? extends Id> type;
        private final Function<String, ? extends Id> maker;

        Kind(Class<? extends Id> type, Function<String, ? extends Id> maker) {
            this.type = type;
            this.maker = maker;
        }
    }

    private final Places places;

    PlannedSection(Places places) {
        this.places = places;
    }

    static Map<String, Object> written(Planned planned) {
        Map<String, Object> byAspect = new LinkedHashMap<>();
        for (Aspect aspect : Aspect.values()) {
            Map<String, Object> byKind = new LinkedHashMap<>();
            for (Kind kind : Kind.values()) {
                List<String> names = planned.aspects().entrySet().stream()
                        .filter(one -> kind.type.isInstance(one.getKey())
                                && one.getValue().contains(aspect))
                        .map(one -> one.getKey().name())
                        .toList();
                if (!names.isEmpty()) {
                    byKind.put(Words.of(kind), names);
                }
            }
            if (!byKind.isEmpty()) {
                byAspect.put(Words.of(aspect), byKind);
            }
        }
        return byAspect;
    }

    Planned read(Json json) {
        FieldReader in = FieldReader.of(json, "planned section", places, names(Aspect.class));
        in.knownAs("plan");
        SortedMap<Id, SortedSet<Aspect>> planned = new TreeMap<>();
        for (Aspect aspect : Aspect.values()) {
            for (Id id : in.optional(Words.of(aspect), this::ids).orElse(List.of())) {
                planned.computeIfAbsent(id, key -> new TreeSet<>()).add(aspect);
            }
        }
        return new Planned(planned);
    }

    private List<Id> ids(Json json) {
        FieldReader in = FieldReader.of(json, "list of what is planned", places, names(Kind.class));
        List<Id> ids = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            ids.addAll(in.ids(Words.of(kind), kind.maker));
        }
        return ids;
    }

    private static <E extends Enum<E>> String[] names(Class<E> type) {
        return Words.all(type).toArray(String[]::new);
    }
}
