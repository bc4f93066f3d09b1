package leat.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Where a drawing is put together, in millimetres on the sheet. Keeps every mark, draws nothing: a writer does. Layers
 * hold items, items hold shapes and texts; neither nests in its own kind. Not safe for several threads.
 */
public final class Canvas {

    private final List<Mark> marks = new ArrayList<>();
    private final TreeSet<String> layerIds = new TreeSet<>();
    private boolean inLayer;
    private boolean inItem;

    /**
     * Begins a layer that shows.
     *
     * @param id letters, digits and hyphens, beginning with a letter, unique in the drawing
     * @param name for people
     */
    public Canvas beginLayer(String id, String name) {
        return beginLayer(id, name, true);
    }

    public Canvas beginLayer(String id, String name, boolean shown) {
        require(!inLayer && !inItem, "layer " + id + " begins inside another layer or an item");
        require(id.matches("[A-Za-z][A-Za-z0-9-]*"), "layer id is \"" + id + "\"; use letters, digits and hyphens");
        require(layerIds.add(id), "layer " + id + " was drawn already");
        inLayer = true;
        marks.add(new Mark.LayerBegin(id, name, shown));
        return this;
    }

    public Canvas endLayer() {
        require(inLayer && !inItem, "a layer ends that is not open, or before its last item");
        inLayer = false;
        marks.add(new Mark.LayerEnd());
        return this;
    }

    /** Begins what belongs to one thing of the plan; {@code title} is read out and shown when pointed at. */
    public Canvas beginItem(String title, String description) {
        require(!inItem, "item " + title + " begins inside another item");
        inItem = true;
        marks.add(new Mark.ItemBegin(title, description));
        return this;
    }

    public Canvas endItem() {
        require(inItem, "an item ends that is not open");
        inItem = false;
        marks.add(new Mark.ItemEnd());
        return this;
    }

    public Canvas shape(PenPath path, Style style) {
        marks.add(new Mark.Shape(path, style));
        return this;
    }

    /** One line of text; {@code y} is where the letters stand. */
    public Canvas text(double x, double y, String text, Lettering lettering) {
        marks.add(new Mark.Text(x, y, text, lettering));
        return this;
    }

    /** The finished drawing. */
    public Drawing drawing(String title, String description, double widthMm, double heightMm) {
        require(!inLayer && !inItem, "the drawing ends with a layer or an item open");
        return new Drawing(title, description, widthMm, heightMm, marks);
    }

    private static void require(boolean holds, String fault) {
        if (!holds) {
            throw new IllegalStateException("canvas: " + fault);
        }
    }
}
