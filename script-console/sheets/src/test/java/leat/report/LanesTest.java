package leat.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("law")
class LanesTest {

    private static final double D = Lanes.SPACING_MM;

    @Test
    void aLineOfItsOwnStaysInItsTruePlace() {
        double[] xy = {0, 0, 10, 0, 10, 10};
        assertArrayEquals(xy, Lanes.of(List.of(new Lanes.Line("a", "", xy))).get("a"));
    }

    @Test
    void linesOnEachOtherAreDrawnSideBySide() {
        SortedMap<String, double[]> drawn = Lanes.of(List.of(
                new Lanes.Line("a", "", new double[] {0, 0, 10, 0, 10, 10}),
                new Lanes.Line("b", "", new double[] {0, 0, 10, 0, 10, 10}),
                new Lanes.Line("c", "", new double[] {10, 10, 10, 0, 0, 0})));
        assertArrayEquals(new double[] {0, 0, 10, 0, 10, 10}, drawn.get("a"));
        // On the sheet, whose y runs down, the right of the walk is below it, then at its left side.
        assertArrayEquals(new double[] {0, D, 10 - D, D, 10 - D, 10}, drawn.get("b"), 1e-9);
        assertArrayEquals(new double[] {10 + D, 10, 10 + D, -D, 0, -D}, drawn.get("c"), 1e-9);
    }

    @Test
    void aLineThatSharesOnlyAPartOfItsWayIsShiftedAsAWhole() {
        SortedMap<String, double[]> drawn = Lanes.of(List.of(
                new Lanes.Line("a", "", new double[] {0, 0, 30, 0}),
                new Lanes.Line("b", "", new double[] {10, 0, 20, 0})));
        assertEquals(D, Math.abs(drawn.get("b")[1]), 1e-9);
        assertEquals(0, drawn.get("a")[1]);
    }

    @Test
    void linesThatOnlyCrossStayInTheirPlaces() {
        SortedMap<String, double[]> drawn = Lanes.of(List.of(
                new Lanes.Line("a", "", new double[] {0, 0, 10, 10}),
                new Lanes.Line("b", "", new double[] {0, 10, 10, 0})));
        assertArrayEquals(new double[] {0, 10, 10, 0}, drawn.get("b"));
    }

    @Test
    void aLineKeepsTheLaneOfWhatItGoesOnFrom() {
        SortedMap<String, double[]> drawn = Lanes.of(List.of(
                new Lanes.Line("a", "", new double[] {0, 0, 10, 0}),
                new Lanes.Line("b", "", new double[] {0, 0, 10, 0}),
                new Lanes.Line("b2", "b", new double[] {10, 0, 20, 0}),
                new Lanes.Line("b3", "b2", new double[] {20, 0, 30, 0}),
                new Lanes.Line("c", "", new double[] {10, 0, 20, 0})));
        assertEquals(drawn.get("b")[1], drawn.get("b2")[1], 1e-9);
        assertEquals(0, drawn.get("b3")[1]);
    }
}
