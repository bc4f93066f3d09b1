package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leat.draw.SvgWriter;

/** Turns a section into what the page's template asks for. */
final class SectionView {

    /** Columns of a table that an upright page holds. */
    private static final int MOST_UPRIGHT = 10;

    private SectionView() {}

    static Map<String, Object> of(Section section) {
        List<Map<String, Object>> blocks = new ArrayList<>();
        for (Section.Block block : section.blocks()) {
            blocks.add(block(section, block, section.id() + "-" + (blocks.size() + 1)));
        }
        List<String> names = List.copyOf(section.files().keySet());
        Map<String, Object> view = new TreeMap<>();
        view.put("id", section.id());
        view.put("title", section.title());
        view.put("wide", isWide(section));
        view.put("blocks", blocks);
        view.put("files", names.isEmpty() ? List.of() : List.of(Map.of("names", String.join(", ", names))));
        return view;
    }

    /**
     * Whether it is printed on lying pages. A browser prints all pages smaller, the sheets too, if a single table is wider
     * than its page; then no scale would be true.
     */
    private static boolean isWide(Section section) {
        return section.blocks().stream()
                .anyMatch(block -> block instanceof Section.Rows rows
                        && rows.table().withoutEmptyColumns().columns().size() > MOST_UPRIGHT);
    }

    private static Map<String, Object> block(Section section, Section.Block block, String id) {
        if (block instanceof Section.Text words) {
            return view("words", words.text());
        }
        if (block instanceof Section.Missing missing) {
            return view("missing", missing.text());
        }
        if (block instanceof Section.Points points) {
            return view("points", Map.of("texts", points.texts()));
        }
        if (block instanceof Section.Rows rows) {
            return view("rows", table(section, rows));
        }
        if (block instanceof Section.Picture picture) {
            return view("picture", SvgWriter.element(picture.drawing(), id + "-"));
        }
        throw new AssertionError(block);
    }

    /** With all other kinds absent: a template looks outwards for names that it does not find. */
    private static Map<String, Object> view(String kind, Object value) {
        Map<String, Object> view = new TreeMap<>();
        for (String other : List.of("words", "missing", "points", "rows", "picture")) {
            view.put(other, List.of());
        }
        view.put(kind, List.of(value));
        return view;
    }

    private static Map<String, Object> table(Section section, Section.Rows rows) {
        Table shown = rows.table().withoutEmptyColumns();
        List<Map<String, Object>> heads = new ArrayList<>();
        for (int i = 0; i < shown.columns().size(); i++) {
            int column = i;
            boolean number =
                    shown.rows().stream().anyMatch(row -> row.get(column).number());
            heads.add(Map.of("text", Words.raised(shown.columns().get(i)), "number", number));
        }
        List<Map<String, Object>> lines = shown.rows().stream()
                .map(row -> Map.<String, Object>of(
                        "cells", row.stream().map(SectionView::cell).toList()))
                .toList();
        String caption = rows.caption();
        Map<String, Object> table = new TreeMap<>();
        table.put("label", caption.isEmpty() ? section.title() : caption);
        table.put("caption", caption.isEmpty() ? List.of() : List.of(caption));
        table.put("heads", heads);
        table.put("lines", lines);
        return table;
    }

    private static Map<String, Object> cell(Cell cell) {
        Map<String, Object> map = new TreeMap<>();
        map.put("text", cell.text());
        String kind = cell.number() ? "number" : WaterStyle.cssOf(cell.text());
        map.put("kind", kind.isEmpty() ? List.of() : List.of(kind));
        return map;
    }
}
