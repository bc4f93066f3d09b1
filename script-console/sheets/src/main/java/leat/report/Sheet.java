package leat.report;

import java.util.ArrayList;
import java.util.List;
import leat.draw.Drawing;
import leat.draw.Mark;
import leat.draw.SvgWriter;

/**
 * A drawing as it stands in the page: with switches for its layers, which work by style rules alone, so the page needs
 * no script at all.
 *
 * @param id of the section
 * @param title over it
 * @param about a line for readers at a screen
 */
record Sheet(String id, String title, String about, Drawing drawing) {

    /** One switch. */
    record Switch(String input, String label, boolean on) {}

    private static final String TEXT = "-text";

    /** The name of its file. */
    String file() {
        return id + ".svg";
    }

    String svg() {
        return SvgWriter.element(drawing, id + "-");
    }

    List<Switch> switches() {
        List<Switch> switches = new ArrayList<>();
        switches.add(new Switch(id + "-true-size", "true size on screen", false));
        for (Mark.LayerBegin layer : switched()) {
            switches.add(new Switch(input(layer), layer.name(), layer.shown()));
        }
        return switches;
    }

    private String input(Mark.LayerBegin layer) {
        return id + "-show-" + layer.id();
    }

    /** Frame and column stay, and lettering goes with what it letters. */
    private List<Mark.LayerBegin> switched() {
        return drawing.layers().stream()
                .filter(layer -> !layer.id().endsWith(TEXT) && !PlanSheet.FURNITURE.contains(layer.id()))
                .toList();
    }

    /** Style rules of the switches, and the size of the printed page. */
    String css() {
        StringBuilder css = new StringBuilder();
        String width = drawing.widthMm() + "mm";
        String height = drawing.heightMm() + "mm";
        css.append("#")
                .append(id)
                .append("-true-size:checked ~ .sheet-view > svg { width: ")
                .append(width);
        css.append("; max-width: none; }\n");
        for (Mark.LayerBegin layer : switched()) {
            String group = " ~ .sheet-view #" + id + "-layer-" + layer.id();
            css.append("#")
                    .append(input(layer))
                    .append(":not(:checked)")
                    .append(group)
                    .append(", #");
            css.append(input(layer))
                    .append(":not(:checked)")
                    .append(group)
                    .append(TEXT)
                    .append(" { display: none; }\n");
            css.append("#")
                    .append(input(layer))
                    .append(":checked")
                    .append(group)
                    .append(" { display: inline; }\n");
        }
        css.append("@page ")
                .append(id)
                .append(" { size: ")
                .append(width)
                .append(' ')
                .append(height);
        css.append("; margin: 0; }\n@media print { .")
                .append(id)
                .append(" { page: ")
                .append(id)
                .append("; } .");
        css.append(id)
                .append(" h2 { display: none; } .")
                .append(id)
                .append(" svg { width: ")
                .append(width);
        css.append("; height: ").append(height).append("; } .").append(id).append(" .sheet { margin: 0; } }\n");
        return css.toString();
    }
}
