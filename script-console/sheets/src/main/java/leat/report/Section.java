package leat.report;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.draw.Drawing;

/**
 * A part of the page below the sheets, with the files that hold the same for other programs. Built step by step:
 *
 * <pre>{@code
 * Section.of(Chapter.WATER, "valves", "Valve schedule")
 *         .say("One row for each valve.")
 *         .table("", table)
 *         .file("valves.csv", table)
 * }</pre>
 *
 * Blocks stand in the order in which they were added. Empty tables and lists are left out, and a section in which nothing
 * but sentences is left does not show.
 *
 * @param id unique in the page; letters, digits and hyphens
 * @param title over it, and in the table of contents
 * @param files by name; written even when the section does not show
 */
record Section(Chapter chapter, String id, String title, List<Block> blocks, SortedMap<String, byte[]> files) {

    /** What a section is made of. */
    sealed interface Block {}

    /** A paragraph. */
    record Text(String text) implements Block {}

    /** A paragraph that shows by itself: what is missing, and which word of the vocabulary adds it. */
    record Missing(String text) implements Block {}

    /** Sentences one below the other. */
    record Points(List<String> texts) implements Block {}

    /** A table; an empty caption is left out. */
    record Rows(String caption, Table table) implements Block {}

    /** A drawing in the text, such as a chart. */
    record Picture(Drawing drawing) implements Block {}

    Section {
        blocks = List.copyOf(blocks);
        files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
    }

    static Section of(Chapter chapter, String id, String title) {
        return new Section(chapter, id, title, List.of(), new TreeMap<>());
    }

    Section say(String text) {
        return text.isEmpty() ? this : with(new Text(text));
    }

    Section missing(String text) {
        return with(new Missing(text));
    }

    Section points(List<String> texts) {
        return texts.isEmpty() ? this : with(new Points(List.copyOf(texts)));
    }

    Section table(String caption, Table table) {
        return table.isEmpty() ? this : with(new Rows(caption, table));
    }

    Section picture(Drawing drawing) {
        return with(new Picture(drawing));
    }

    /** The table as a file for other programs, unless it is empty. */
    Section file(String name, Table table) {
        return table.isEmpty() ? this : file(name, Csv.write(table));
    }

    Section file(String name, byte[] bytes) {
        SortedMap<String, byte[]> more = new TreeMap<>(files);
        more.put(name, bytes.clone());
        return new Section(chapter, id, title, blocks, more);
    }

    Section file(String name, String text) {
        return file(name, text.getBytes(StandardCharsets.UTF_8));
    }

    boolean isEmpty() {
        return blocks.stream().allMatch(Text.class::isInstance);
    }

    private Section with(Block block) {
        List<Block> more = new ArrayList<>(blocks);
        more.add(block);
        return new Section(chapter, id, title, more, files);
    }
}
