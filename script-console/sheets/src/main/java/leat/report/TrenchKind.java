package leat.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.digging.DiggingResult;
import leat.calc.digging.LaidDepth;
import leat.calc.digging.TrenchDig;
import leat.model.id.SegmentId;

/**
 * Trenches that look alike when they are cut across: as wide and as deep, and with the same kinds of thing at the same
 * depths.
 *
 * @param letter A, B, … Z, AA, … in the order of their first trenches
 * @param example one of them
 * @param trenches all of them
 */
record TrenchKind(String letter, TrenchDig example, List<SegmentId> trenches) {

    TrenchKind {
        trenches = List.copyOf(trenches);
    }

    static List<TrenchKind> of(DiggingResult digging) {
        // In the order of first sight, not of the looks.
        List<String> looks = new ArrayList<>();
        Map<String, List<TrenchDig>> alike = new TreeMap<>();
        for (TrenchDig dig : digging.trenches().values()) {
            String look = look(dig);
            if (!looks.contains(look)) {
                looks.add(look);
            }
            alike.computeIfAbsent(look, key -> new ArrayList<>()).add(dig);
        }
        List<TrenchKind> kinds = new ArrayList<>();
        for (String look : looks) {
            List<TrenchDig> same = alike.getOrDefault(look, List.of());
            kinds.add(new TrenchKind(
                    letter(kinds.size()),
                    same.get(0),
                    same.stream().map(TrenchDig::id).toList()));
        }
        return List.copyOf(kinds);
    }

    static SortedMap<SegmentId, String> letters(List<TrenchKind> kinds) {
        SortedMap<SegmentId, String> letters = new TreeMap<>();
        kinds.forEach(kind -> kind.trenches().forEach(id -> letters.put(id, kind.letter())));
        return Collections.unmodifiableSortedMap(letters);
    }

    /** To the centimetre, which is finer than anyone digs. */
    private static String look(TrenchDig dig) {
        StringBuilder look = new StringBuilder();
        look.append(centimetres(dig.width().metres()))
                .append(' ')
                .append(centimetres(dig.depth().metres()));
        for (LaidDepth laid : dig.laid()) {
            look.append(' ')
                    .append(laid.kind())
                    .append(' ')
                    .append(centimetres(laid.outside().metres()))
                    .append(' ')
                    .append(centimetres(laid.cover().metres()));
        }
        return look.toString();
    }

    private static long centimetres(double metres) {
        return Math.round(metres * 100);
    }

    private static String letter(int number) {
        String last = Character.toString('A' + number % 26);
        return number < 26 ? last : letter(number / 26 - 1) + last;
    }
}
