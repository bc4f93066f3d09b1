package leat.model.finding;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class FindingTest {

    private static Step step(double kilopascals) {
        return new Step(
                "friction",
                "h",
                List.of(),
                Pressure.kilopascals(kilopascals),
                new Citation("a text", Standing.PUBLISHED));
    }

    @Tag("law")
    @Test
    void theLastStepIsTheFigure() {
        Ledger ledger =
                new Ledger(Subject.of(new HeadId("R7")), "pressure", List.of(step(400), step(-12.5), step(387.5)));
        assertEquals(Pressure.kilopascals(387.5), ledger.value());
    }

    @Tag("law")
    @Test
    void theGapIsAShareOfTheAnswer() {
        assertEquals(0.25, new Bound("heads", Count.of(40), Count.of(30)).gap().value());
        assertEquals(0, new Bound("heads", Count.of(30), Count.of(30)).gap().value(), "proven best");
        assertEquals(
                0, new Bound("trench length", Length.ZERO, Length.ZERO).gap().value());
    }

    @Tag("pinned")
    @Test
    void subjectsAndCitationsReadAsText() {
        assertEquals("head R7", Subject.of(new HeadId("R7")).toString());
        assertEquals("head R7, radius", Subject.of(new HeadId("R7"), "radius").toString());
        assertEquals("at 1 m, 2.5 m", Subject.of(new Point(1, 2.5)).toString());
        assertEquals("the yard", Subject.yard().toString());
        assertEquals("a text (published)", new Citation("a text", Standing.PUBLISHED).toString());
        assertEquals(
                "common practice, no source",
                new Citation("common practice, no source", Standing.COMMON_PRACTICE).toString());
        assertEquals("the yard document (stated in the yard)", Citation.OF_THE_YARD.toString());
    }

    @Tag("pinned")
    @Test
    void refusals() {
        Subject yard = Subject.yard();
        refused("ledger: steps is none; it must be at least one", () -> new Ledger(yard, "pressure", List.of()));
        refused(
                "ledger: steps[0] is missing; it must be given",
                () -> new Ledger(yard, "pressure", Arrays.asList((Step) null)));
        refused("reason: text is missing; it must be given", () -> new Reason(yard, null));
    }
}
