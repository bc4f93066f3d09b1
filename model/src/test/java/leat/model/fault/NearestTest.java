package leat.model.fault;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class NearestTest {

    private final List<String> names = List.of("south wall", "north wall", "R1", "R2", "street");

    @Tag("law")
    @Test
    void aSlipOfTheHandIsForgiven() {
        assertEquals(Optional.of("south wall"), Nearest.to("soth wall", names));
        assertEquals(Optional.of("south wall"), Nearest.to("SOUTH WALL", names));
        assertEquals(Optional.of("street"), Nearest.to("steret", names));
        assertEquals(Optional.of("R1"), Nearest.to("R3", names), "ties go to the first");
        assertEquals(Optional.empty(), Nearest.to("manifold", names));
        assertEquals(Optional.empty(), Nearest.to("x", List.of()));
        assertEquals("; perhaps 'street'", Nearest.hint("streat", names));
        assertEquals("", Nearest.hint("manifold", names));
    }

    @Tag("reference")
    @Test
    void editsOfTextbookPairs() {
        // Source: pairs found in many texts on Levenshtein's distance; two letters that changed places count once here
        assertEquals(3, Nearest.edits("kitten", "sitting"));
        assertEquals(3, Nearest.edits("saturday", "sunday"));
        assertEquals(1, Nearest.edits("ca", "ac"));
        assertEquals(3, Nearest.edits("ca", "abc"));
    }

    private static String text(Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(7); i > 0; i--) {
            text.append((char) ('a' + random.nextInt(3)));
        }
        return text.toString();
    }

    @Tag("law")
    @RepeatedTest(200)
    void editsAreSymmetricAndBounded(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        String a = text(random);
        String b = text(random);
        int edits = Nearest.edits(a, b);
        assertEquals(edits, Nearest.edits(b, a));
        assertEquals(a.equals(b), edits == 0);
        assertTrue(edits >= Math.abs(a.length() - b.length()) && edits <= Math.max(a.length(), b.length()));
    }

    @Tag("pinned")
    @Test
    void requirementsNameThingFieldValueAndWhatIsAllowed() {
        refused("pipe P1: length is missing; it must be given", () -> Require.present("pipe P1", "length", null));
        refused(
                "pipe P1: share is Infinity; it must be a finite number",
                () -> Require.finite("pipe P1", "share", 1 / 0.0));
        refused("pipe P1: age is 0; it must be more than 0", () -> Require.moreThan("pipe P1", "age", 0, 0));
        refused("pipe P1: age is -1; it must be at least 0", () -> Require.atLeast("pipe P1", "age", -1, 0));
        refused(
                "yard: parts[1] is missing; it must be given",
                () -> Require.entries("yard", "parts", Arrays.asList("a", null)));
        refused(
                "R 2: id is used twice; it must be unique among its kind",
                () -> Require.unique("R", List.of(2, 1, 2), x -> x));
        InvalidValueException inner =
                assertThrows(InvalidValueException.class, () -> Require.present("region", "outer", null));
        InvalidValueException named = inner.within("lawn front");
        assertEquals("lawn front, region: outer is missing; it must be given", named.getMessage());
        assertEquals("lawn front, region", named.thing());
        assertEquals("outer", named.field());
        assertEquals(inner, named.getCause());
    }
}
