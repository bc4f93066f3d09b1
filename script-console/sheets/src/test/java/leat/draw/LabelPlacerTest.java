package leat.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import leat.draw.LabelPlacer.Label;
import leat.draw.LabelPlacer.Placed;
import leat.draw.LabelPlacer.Placement;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("law")
class LabelPlacerTest {

    private static final Box FIELD = new Box(0, 0, 200, 150);

    @RepeatedTest(20)
    void nothingOverlapsInACrowd(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        LabelPlacer placer = new LabelPlacer(FIELD);
        List<Box> heads = new ArrayList<>();
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < 80; i++) {
            double x = random.nextDouble(60, 140);
            double y = random.nextDouble(50, 100);
            Box head = Box.around(x, y, 1, 1);
            heads.add(head);
            placer.take(head);
            labels.add(new Label("R" + i, x, y, 1.4, 7, 2.4, 0));
        }
        Placement placement = placer.place(labels);
        assertEquals(80, placement.placed().size() + placement.withoutRoom().size());
        // Two labels on a square centimetre of heads: nine in ten find room even so.
        assertTrue(
                placement.placed().size() >= 72, "placed " + placement.placed().size());
        for (Placed placed : placement.placed()) {
            assertTrue(FIELD.contains(placed.box()));
            heads.forEach(head -> assertFalse(head.overlaps(placed.box())));
            for (Placed other : placement.placed()) {
                assertTrue(other.equals(placed) || !other.box().overlaps(placed.box()));
            }
        }
    }

    @Test
    void theOrderInWhichLabelsComeDoesNotMatter() {
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            int row = i / 6;
            labels.add(new Label("R" + i, 20 + i % 6 * 3.0, 20 + row * 2.0, 1, 8, 2.4, i % 2));
        }
        Placement once = new LabelPlacer(FIELD).place(labels);
        Collections.reverse(labels);
        assertEquals(once, new LabelPlacer(FIELD).place(labels));
    }

    @Test
    void aLabelStepsAsideForALineAndStaysNearOtherwise() {
        Label label = new Label("A", 50, 50, 1, 8, 2.4, 0);
        Box free = new LabelPlacer(FIELD).place(List.of(label)).placed().get(0).box();
        assertEquals(51, free.left(), 1e-9);
        Box aside = new LabelPlacer(FIELD)
                .avoid(0, 50, 200, 50)
                .place(List.of(label))
                .placed()
                .get(0)
                .box();
        assertFalse(aside.crossedBy(0, 50, 200, 50));
    }

    @Test
    void whatFindsNoRoomIsSaidSo() {
        LabelPlacer placer = new LabelPlacer(FIELD).take(FIELD);
        Label label = new Label("A", 50, 50, 1, 8, 2.4, 0);
        assertEquals(List.of(label), placer.place(List.of(label)).withoutRoom());
    }

    @Test
    void aLineThatOnlyTouchesABoxDoesNotCrossIt() {
        Box box = new Box(0, 0, 10, 10);
        assertTrue(box.crossedBy(-5, 5, 15, 5));
        assertTrue(box.crossedBy(2, 2, 3, 3));
        assertFalse(box.crossedBy(-5, 0, 15, 0));
        assertFalse(box.crossedBy(-5, 20, 15, 20));
        assertFalse(box.crossedBy(-5, 5, -1, 5));
    }
}
