package leat.calc.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.catalog.MaterialKind;
import leat.model.finding.Subject;
import leat.model.id.NaturalOrder;
import leat.model.quantity.Count;
import leat.model.quantity.Quantity;
import leat.model.site.Phase;

/** Collects what the parts of the takeoff count, line by line. Used once. */
final class Materials {

    private final SortedMap<LineKey, Draft> drafts = new TreeMap<>();

    private record LineKey(Phase phase, MaterialKind kind, String key) implements Comparable<LineKey> {

        private static final Comparator<LineKey> ORDER = Comparator.comparing(LineKey::phase)
                .thenComparing(LineKey::kind)
                .thenComparing(LineKey::key, NaturalOrder::compare)
                .thenComparing(LineKey::key); // natural order takes 01 for 1

        @Override
        public int compareTo(LineKey other) {
            return ORDER.compare(this, other);
        }
    }

    private record Draft(String text, List<MaterialUse> uses) {}

    private final SortedMap<LineKey, StockPieces> stocks = new TreeMap<>();

    void add(Phase phase, MaterialKind kind, String key, String text, MaterialUse use) {
        drafts.computeIfAbsent(new LineKey(phase, kind, key), one -> new Draft(text, new ArrayList<>()))
                .uses()
                .add(use);
    }

    /** Goods that are counted; none adds nothing. */
    void count(Phase phase, MaterialKind kind, String key, String text, int count, Subject subject, String why) {
        if (count > 0) {
            add(phase, kind, key, text, new MaterialUse(subject, why, Count.of(count)));
        }
    }

    void stock(Phase phase, MaterialKind kind, String key, StockPieces stock) {
        stocks.put(new LineKey(phase, kind, key), stock);
    }

    List<MaterialLine> lines() {
        List<MaterialLine> lines = new ArrayList<>();
        drafts.forEach((key, draft) -> lines.add(new MaterialLine(
                key.key(),
                key.kind(),
                draft.text(),
                sum(draft.uses()),
                key.phase(),
                Optional.ofNullable(stocks.get(key)),
                draft.uses())));
        return lines;
    }

    private static Quantity sum(List<MaterialUse> uses) {
        double si = 0;
        for (MaterialUse use : uses) {
            si += use.quantity().si();
        }
        return uses.get(0).quantity().dimension().of(si);
    }
}
