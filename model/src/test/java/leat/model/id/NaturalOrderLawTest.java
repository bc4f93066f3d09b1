package leat.model.id;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("law")
class NaturalOrderLawTest {

    private static final String LETTERS = "0012R9a -\u00e9\u0663";

    private static String text(Random random) {
        StringBuilder text = new StringBuilder();
        for (int length = random.nextInt(6); length >= 0; length--) {
            text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return text.toString();
    }

    @RepeatedTest(50)
    void itIsATotalOrder(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        for (int i = 0; i < 400; i++) {
            String a = text(random);
            String b = text(random);
            String c = text(random);
            assertEquals(a.equals(b), NaturalOrder.compare(a, b) == 0, a + " and " + b);
            assertEquals(
                    Integer.signum(NaturalOrder.compare(a, b)), -Integer.signum(NaturalOrder.compare(b, a)), a + b);
            if (NaturalOrder.compare(a, b) <= 0 && NaturalOrder.compare(b, c) <= 0) {
                assertTrue(NaturalOrder.compare(a, c) <= 0, a + ", " + b + ", " + c);
            }
        }
    }

    @RepeatedTest(20)
    void numbersInNamesStandInTheOrderOfNumbers(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        long a = random.nextLong() & Long.MAX_VALUE;
        long b = random.nextLong() & Long.MAX_VALUE;
        assertEquals(Long.compare(a, b), Integer.signum(NaturalOrder.compare("R" + a + "x", "R" + b + "x")));
    }

    @Test
    void asAPersonWouldSort() {
        List<String> sorted = List.of(
                "7",
                "10",
                "R",
                "R1",
                "R02",
                "R2",
                "R02a",
                "R2b",
                "R10",
                "R10/2",
                "R10/10",
                "zone-1/lateral-9",
                "zone-1/lateral-10",
                "zone-2/lateral-1",
                "zone-100000000000000000000/lateral-1");
        List<String> shuffled = new ArrayList<>(sorted);
        Collections.shuffle(shuffled, new Random(1));
        shuffled.sort(NaturalOrder::compare);
        assertEquals(sorted, shuffled);
    }
}
