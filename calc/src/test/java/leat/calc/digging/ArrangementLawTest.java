package leat.calc.digging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leat.calc.digging.Arrangement.Layer;
import leat.model.id.CableId;
import leat.model.id.PipeId;
import leat.model.site.Phase;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Covers, separations and beds hold however things come together. */
@Tag("law")
class ArrangementLawTest {

    private static final Spacing SPACING = new Spacing(0.15, 0.05, 0.3, 0.05);

    private static Laid pipe(String name, double outsideM, double coverM) {
        return new Laid(new PipeId(name), LaidKind.LATERAL, Phase.NOW, outsideM, coverM);
    }

    private static Laid power(String name, double coverM) {
        return new Laid(new CableId(name), LaidKind.POWER, Phase.NOW, 0.012, coverM);
    }

    /** Power at 0.6 m below a pipe at 0.2 m: 0.3 m of earth between them, so one over the other and a narrow trench. */
    @Test
    void powerLiesBelowWaterWhereDepthAllows() {
        Arrangement arrangement = Arrangement.of(List.of(pipe("p", 0.033, 0.2), power("c", 0.6)), 0.66, SPACING);
        assertEquals(2, arrangement.layers().size());
        assertEquals(new CableId("c"), arrangement.depths().get(0).id());
        assertEquals(0.183, arrangement.widthM(), 1e-12);
        assertEquals(
                0.66 - 0.048 - 0.012 - 0.3 - 0.033,
                arrangement.depths().get(1).cover().metres(),
                1e-12);
    }

    /** Not deep enough for one over the other: they lie 0.3 m apart. */
    @Test
    void powerLiesBesideWaterInAShallowTrench() {
        Arrangement arrangement = Arrangement.of(List.of(pipe("p", 0.033, 0.45), power("c", 0.45)), 0.53, SPACING);
        assertEquals(1, arrangement.layers().size());
        assertEquals(0.15 + 0.012 + 0.3 + 0.033, arrangement.widthM(), 1e-12);
    }

    @Test
    void nothingNeedsNoWidth() {
        assertEquals(0, Arrangement.of(List.of(), 0.5, SPACING).widthM());
    }

    @RepeatedTest(200)
    void coversAndSeparationsHold(RepetitionInfo turn) {
        var random = new Random(turn.getCurrentRepetition());
        List<Laid> things = new ArrayList<>();
        double deepestM = 0;
        for (int i = 0; i < 1 + random.nextInt(7); i++) {
            double coverM = new double[] {0.15, 0.2, 0.45, 0.6}[random.nextInt(4)];
            Laid one = random.nextInt(3) == 0
                    ? power("c" + i, coverM)
                    : pipe("p" + i, random.nextDouble(0.02, 0.06), coverM);
            things.add(one);
            deepestM = Math.max(deepestM, one.reachM());
        }
        double depthM = deepestM + random.nextDouble(0, 0.4);
        Arrangement arrangement = Arrangement.of(things, depthM, SPACING);
        assertEquals(things.size(), arrangement.depths().size());
        arrangement
                .depths()
                .forEach(one -> assertTrue(one.cover().metres() >= one.wanted().metres() - 1e-9, () -> one.toString()));
        List<Layer> layers = arrangement.layers();
        for (int i = 0; i < layers.size(); i++) {
            assertTrue(layers.get(i).widthM(SPACING) <= arrangement.widthM() + 1e-12);
            for (int j = 0; j < i; j++) {
                for (Laid upper : layers.get(i).things()) {
                    for (Laid lower : layers.get(j).things()) {
                        double clearM = layers.get(j).bottomM()
                                - lower.outsideM()
                                - layers.get(i).bottomM();
                        assertTrue(clearM >= SPACING.between(upper, lower) - 1e-9, upper + " over " + lower);
                    }
                }
            }
        }
        double oneLayerM = things.stream().mapToDouble(Laid::outsideM).sum()
                + SPACING.roomM()
                + (things.size() - 1) * SPACING.apartM();
        assertTrue(arrangement.widthM() <= oneLayerM + 1e-12);
    }
}
