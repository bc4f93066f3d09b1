package leat.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import leat.model.plan.Yard;
import leat.model.quantity.Dimension;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@Tag("law")
class YardDocumentLawTest {

    @RepeatedTest(100)
    void readingWhatWasWrittenGivesAnEqualYardAndWritingItAgainTheSameText(RepetitionInfo turn) {
        Yard yard = RandomYards.of(turn.getCurrentRepetition());
        for (UnitSystem units : UnitSystem.values()) {
            Yard inUnits = yard.units(units);
            String text = YardDocument.write(inUnits);
            Yard back = YardDocument.read(text, "random.yard.json");
            assertEquals(inUnits, back);
            assertEquals(text, YardDocument.write(back));
        }
    }

    @RepeatedTest(10)
    void linesAreShortEnoughToRead(RepetitionInfo turn) {
        String text = YardDocument.write(RandomYards.of(turn.getCurrentRepetition()));
        text.lines()
                .forEach(line -> assertTrue(line.length() <= 300, line)); // a point or a text may be longer than 110
        assertTrue(text.endsWith("}\n"));
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void aWrittenQuantityReadsBackToTheSameDouble(Dimension dimension) {
        var random = new Random(dimension.ordinal());
        for (int i = 0; i < 3_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            boolean allowed = Double.isFinite(value) && dimension != Dimension.COUNT;
            double si = allowed ? value : random.nextInt() / (dimension == Dimension.COUNT ? 1.0 : 64.0);
            for (UnitSystem units : UnitSystem.values()) {
                Quantity quantity = dimension.of(si);
                String text = Units.write(quantity, units);
                assertEquals(quantity, Units.parse(dimension, text), text);
                assertEquals(text, Units.write(Units.parse(dimension, text), units));
            }
        }
    }
}
