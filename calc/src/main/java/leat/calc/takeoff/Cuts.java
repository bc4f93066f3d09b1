package leat.calc.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.takeoff.internal.CuttingStock;
import leat.model.catalog.MaterialKind;
import leat.model.id.Id;
import leat.model.id.NaturalOrder;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.site.Phase;

/** Gathers the pieces of each material and cuts them from stock. Used once. */
final class Cuts {

    /** A rest shorter than this is rounding. */
    private static final double NO_REST_M = 1e-6;

    private record Material(Phase phase, MaterialKind kind, String key) implements Comparable<Material> {

        @Override
        public int compareTo(Material other) {
            return Comparator.comparing(Material::phase)
                    .thenComparing(Material::kind)
                    .thenComparing(Material::key, NaturalOrder::compare)
                    .thenComparing(Material::key)
                    .compare(this, other);
        }
    }

    private record Draft(double stockM, List<CutPiece> pieces) {}

    private final SortedMap<Material, Draft> drafts = new TreeMap<>();

    /** Whole lengths of stock and what is left; the sum is the length. */
    static List<CutPiece> split(Id of, double lengthM, double stockM) {
        List<CutPiece> pieces = new ArrayList<>();
        double leftM = lengthM;
        while (leftM > stockM + NO_REST_M) {
            pieces.add(new CutPiece(of, new Length(stockM)));
            leftM -= stockM;
        }
        pieces.add(new CutPiece(of, new Length(leftM)));
        return pieces;
    }

    /** All pieces of a material have the same stock. */
    void add(Phase phase, MaterialKind kind, String key, double stockM, List<CutPiece> pieces) {
        drafts.computeIfAbsent(new Material(phase, kind, key), one -> new Draft(stockM, new ArrayList<>()))
                .pieces()
                .addAll(pieces);
    }

    /** Cuts all, and tells the lines how many lengths of stock they take. */
    List<CutList> cut(Count steps, Materials materials) {
        List<CutList> lists = new ArrayList<>();
        drafts.forEach((material, draft) -> {
            CutList list = cut(material, draft, steps);
            lists.add(list);
            materials.stock(
                    material.phase(),
                    material.kind(),
                    material.key(),
                    new StockPieces(list.stock(), Count.of(list.sticks().size())));
        });
        return lists;
    }

    private static CutList cut(Material material, Draft draft, Count steps) {
        double[] lengthM = draft.pieces().stream()
                .mapToDouble(piece -> Math.min(draft.stockM(), piece.length().metres()))
                .toArray();
        CuttingStock.Cut cut = CuttingStock.cut(lengthM, draft.stockM(), (int) steps.value());
        List<List<CutPiece>> byStick = new ArrayList<>();
        for (int i = 0; i < cut.stickCount(); i++) {
            byStick.add(new ArrayList<>());
        }
        for (int i = 0; i < lengthM.length; i++) {
            byStick.get(cut.stickOf()[i]).add(draft.pieces().get(i));
        }
        List<CutStick> sticks =
                byStick.stream().map(pieces -> stick(pieces, draft.stockM())).toList();
        return new CutList(
                material.key(), material.phase(), new Length(draft.stockM()), sticks, Count.of(cut.boundCount()));
    }

    private static CutStick stick(List<CutPiece> pieces, double stockM) {
        List<CutPiece> sorted = new ArrayList<>(pieces);
        sorted.sort(Comparator.comparing(CutPiece::length).reversed());
        double leftM = stockM
                - sorted.stream().mapToDouble(one -> one.length().metres()).sum();
        return new CutStick(sorted, new Length(Math.max(0, leftM)));
    }
}
