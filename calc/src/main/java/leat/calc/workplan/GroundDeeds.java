package leat.calc.workplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.digging.LaidDepth;
import leat.calc.digging.LaidKind;
import leat.calc.digging.TrenchDig;
import leat.calc.workplan.StepGraph.Deed;
import leat.model.id.Id;
import leat.model.id.LaidId;
import leat.model.id.SegmentId;
import leat.model.quantity.Quantity;
import leat.model.site.ExistingService;
import leat.model.site.SurfaceKind;

/** Deeds on the ground: ask, stake, find, open, dig, bed, cover layer by layer, record, fill, make good. */
final class GroundDeeds {

    private final StepGraph graph;
    private final PhaseWorks works;
    private final SortedMap<SegmentId, Deed> beds = new TreeMap<>();
    private final SortedMap<Id, Deed> laying = new TreeMap<>();
    private final SortedMap<Id, List<Deed>> proofs = new TreeMap<>();
    private final SortedMap<Id, List<Deed>> afterFill = new TreeMap<>();

    GroundDeeds(StepGraph graph, PhaseWorks works) {
        this.graph = graph;
        this.works = works;
        works.trenches().forEach(this::addOpening);
    }

    /** From the stakes to the bed. */
    private void addOpening(TrenchDig dig) {
        Deed dug = graph.add(digKind(dig), "", dig.id());
        Deed bed = graph.add(WorkKind.BED, "", dig.id());
        graph.order(dug, bed);
        if (dig.cut().containsKey(SurfaceKind.PAVING)) {
            Deed open = graph.add(WorkKind.OPEN, "", dig.id());
            graph.order(open, dug);
        }
        Quantity support = works.site.rules().get("digging.depth.support").limit();
        if (dig.depth().si() >= support.si()) {
            Deed held = graph.add(WorkKind.SUPPORT, "", dig.id());
            graph.order(dug, held);
            graph.order(held, bed);
        }
        for (ExistingService service : works.near(dig.id())) {
            Deed find = graph.add(WorkKind.FIND, "", List.of(service.id(), dig.id()));
            graph.order(find, dug);
        }
        beds.put(dig.id(), bed);
    }

    private WorkKind digKind(TrenchDig dig) {
        if (dig.byHand()) {
            return WorkKind.DIG_BY_HAND;
        }
        boolean carries = works.holds(dig, LaidKind.MAIN) || works.holds(dig, LaidKind.POWER);
        return carries ? WorkKind.DIG_MAIN : WorkKind.DIG;
    }

    /** The thing is laid by that deed, when the trenches that it lies in are ready. */
    void laid(LaidId thing, Deed lay) {
        laying.put(thing, lay);
        works.trenchesOf(thing)
                .forEach(dig -> Optional.ofNullable(beds.get(dig.id())).ifPresent(bed -> graph.order(bed, lay)));
    }

    /** The thing must be seen or tested by that deed while it is open. */
    void proved(Id thing, Deed proof) {
        proofs.computeIfAbsent(thing, key -> new ArrayList<>()).add(proof);
    }

    /** The deed waits until the trenches of the thing are filled. */
    void whenFilled(LaidId thing, Deed deed) {
        afterFill.computeIfAbsent(thing, key -> new ArrayList<>()).add(deed);
    }

    Optional<Deed> laying(Id thing) {
        return Optional.ofNullable(laying.get(thing));
    }

    /** What comes when all things have their deeds. */
    void add() {
        works.ends().forEach(end -> {
            Deed cap = graph.add(WorkKind.END, "", List.of(end.id(), end.waitsFor()));
            laying(end.id()).ifPresent(lay -> graph.order(lay, cap));
            graph.of(WorkKind.PULL).stream()
                    .filter(pull ->
                            pull.key().equals(end.id().kind() + " " + end.id().name()))
                    .forEach(pull -> graph.order(pull, cap));
            proved(end.id(), cap);
        });
        works.trenches().forEach(this::addClosing);
        addAsking();
    }

    private void addClosing(TrenchDig dig) {
        List<LaidDepth> laid = works.laid(dig);
        Deed record = graph.add(WorkKind.RECORD, "", dig.id());
        Deed fill = graph.add(WorkKind.BACKFILL, "", dig.id());
        graph.order(record, fill);
        int layers =
                laid.stream().mapToInt(one -> (int) one.layer().value()).max().orElse(0);
        for (int layer = 1; layer <= layers; layer++) {
            int number = layer;
            List<LaidDepth> here =
                    laid.stream().filter(one -> one.layer().value() == number).toList();
            Optional<Deed> cover = layer < layers
                    ? Optional.of(graph.add(WorkKind.COVER, "layer " + layer, dig.id()))
                    : Optional.empty();
            for (LaidDepth one : here) {
                laying(one.id()).ifPresent(lay -> graph.order(lay, cover.orElse(record)));
                proofs.getOrDefault(one.id(), List.of()).forEach(proof -> graph.order(proof, cover.orElse(record)));
            }
            cover.ifPresent(deed -> addAbove(deed, laid, number));
        }
        laid.forEach(one -> afterFill.getOrDefault(one.id(), List.of()).forEach(deed -> graph.order(fill, deed)));
        Deed good = graph.add(WorkKind.RESTORE, "", dig.id());
        graph.order(fill, good);
    }

    private void addAbove(Deed cover, List<LaidDepth> laid, int layer) {
        laid.stream()
                .filter(one -> one.layer().value() == layer + 1)
                .forEach(one -> laying(one.id()).ifPresent(lay -> graph.order(cover, lay)));
    }

    /** Before the first spade: permits, stakes, marks. Only where something is dug or done. */
    private void addAsking() {
        if (works.trenches().isEmpty()) {
            return;
        }
        List<Id> staked = new ArrayList<>();
        works.trenches().forEach(dig -> staked.add(dig.id()));
        Deed stake = graph.add(WorkKind.STAKE, "", staked);
        List<Id> lines = new ArrayList<>();
        works.yard.terrain().services().forEach(service -> lines.add(service.id()));
        Deed notice = graph.add(WorkKind.NOTICE, "", lines);
        graph.order(stake, notice);
        graph.of(WorkKind.PERMIT).forEach(permit -> graph.order(permit, stake));
        List.of(WorkKind.FIND, WorkKind.OPEN, WorkKind.DIG_BY_HAND, WorkKind.DIG_MAIN, WorkKind.DIG)
                .forEach(kind -> graph.of(kind).forEach(deed -> graph.order(notice, deed)));
        // What is found by hand is known before a machine comes.
        graph.of(WorkKind.FIND)
                .forEach(find -> List.of(WorkKind.DIG_MAIN, WorkKind.DIG)
                        .forEach(kind -> graph.of(kind).forEach(deed -> graph.order(find, deed))));
    }
}
