package leat.calc.takeoff;

import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.level;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.psi;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.yard;
import static leat.model.plan.Parts.zone;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.catalog.MaterialKind;
import leat.model.plan.Part;
import leat.model.plan.PipePart;
import leat.model.plan.Place;
import leat.model.plan.Yard;
import leat.model.quantity.Length;
import leat.model.site.Phase;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Laws that hold for any tree of pipes. */
@Tag("law")
class TakeoffLawTest {

    private static final String[] SIZES = {"1/2 in", "3/4 in", "1 in"};

    /** A lateral that grows from its valve: each pipe starts at the end of one before or on its way. */
    private static Yard grown(Random random, int pipes, double riseFt) {
        List<Part> parts = new ArrayList<>(List.of(
                level(at(-100, 0), feet(0)),
                level(at(100, 0), feet(riseFt)),
                level(at(0, 200), feet(riseFt)),
                mains("street", at(0, 0)).staticPressure(psi(60)),
                TwoZones.plastic("main", polyline(at(0, 0), at(0, 10)), "1 in").from("street"),
                manifold("box", at(0, 10)).on("main").valves("V")));
        List<double[]> starts = new ArrayList<>();
        List<double[]> ends = new ArrayList<>();
        List<String> heads = new ArrayList<>();
        for (int i = 0; i < pipes; i++) {
            int from = i == 0 ? -1 : random.nextInt(i);
            double share = random.nextBoolean() ? 1 : random.nextDouble(0.2, 0.8);
            double[] a = from < 0
                    ? new double[] {0, 10}
                    : new double[] {
                        starts.get(from)[0] + share * (ends.get(from)[0] - starts.get(from)[0]),
                        starts.get(from)[1] + share * (ends.get(from)[1] - starts.get(from)[1])
                    };
            double[] b = {a[0] + random.nextDouble(-30, 30), a[1] + random.nextDouble(5, 60)};
            starts.add(a);
            ends.add(b);
            Place end = at(b[0], b[1]);
            PipePart pipe = TwoZones.plastic("p" + i, polyline(at(a[0], a[1]), end), SIZES[random.nextInt(3)]);
            parts.add((from < 0 ? pipe.from("V") : pipe.from("p" + from)).to("H" + i));
            parts.add(spray("H" + i, end).family("spray-3_7").arc(0, 90).radius(feet(12)));
            heads.add("H" + i);
        }
        parts.add(zone("Z").valve("V").heads(heads.toArray(String[]::new)));
        return yard("Grown").with(parts.toArray(Part[]::new));
    }

    /** In a tree the degrees of inner places less two sum up to the number of leaves less two; the valve is a leaf too. */
    @RepeatedTest(60)
    void threeWayFittingsAreOneFewerThanHeads(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        int pipes = 1 + random.nextInt(20);
        TakeoffResult takeoff = TwoZones.takeoff(grown(random, pipes, 0));
        SortedMap<String, Double> fittings = new TreeMap<>();
        takeoff.lines().stream()
                .filter(line -> line.kind() == MaterialKind.FITTING)
                .forEach(line -> fittings.put(line.key(), line.quantity().si()));
        double threeWays = 0;
        for (var fitting : fittings.entrySet()) {
            boolean isTee =
                    fitting.getKey().startsWith("tee ") || fitting.getKey().startsWith("outlet tee ");
            threeWays +=
                    isTee ? fitting.getValue() : fitting.getKey().startsWith("cross ") ? 2 * fitting.getValue() : 0;
        }
        assertEquals(pipes - 1, threeWays);
        assertEquals(pipes, fittings.get("swing joint"));
    }

    /** Nothing is lost or won by cutting: the pieces of a material are as long as the material, as is stock less rests. */
    @RepeatedTest(60)
    void piecesAreAsLongAsThePipes(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        TakeoffResult takeoff = TwoZones.takeoff(grown(random, 12, random.nextInt(40)));
        for (CutList cuts : takeoff.cuts()) {
            double piecesM = cuts.sticks().stream()
                    .flatMap(stick -> stick.pieces().stream())
                    .mapToDouble(piece -> piece.length().metres())
                    .sum();
            double leftM = cuts.sticks().stream()
                    .mapToDouble(stick -> stick.left().metres())
                    .sum();
            MaterialLine line = takeoff.lines().stream()
                    .filter(one -> one.key().equals(cuts.key()) && one.phase() == cuts.phase())
                    .findFirst()
                    .orElseThrow();
            assertEquals(line.quantity().si(), piecesM, 1e-6, cuts.key());
            assertEquals(cuts.sticks().size() * cuts.stock().metres(), piecesM + leftM, 1e-4, cuts.key());
            assertTrue(cuts.least().value() <= cuts.sticks().size());
            assertEquals(
                    cuts.sticks().size(), line.stock().orElseThrow().count().value());
        }
    }

    @RepeatedTest(20)
    void pipesOnASlopeAreLongerAndAtMostByTheirRise(RepetitionInfo turn) {
        int seed = turn.getCurrentRepetition();
        double flatM = pipeM(TwoZones.takeoff(grown(new Random(seed), 8, 0)));
        double steepM = pipeM(TwoZones.takeoff(grown(new Random(seed), 8, 30)));
        assertTrue(steepM > flatM, steepM + " m against " + flatM + " m");
        assertTrue(steepM < flatM * Math.sqrt(1 + 0.5 * 0.5), "30 ft on 100 ft and less");
    }

    private static double pipeM(TakeoffResult takeoff) {
        return takeoff.lines().stream()
                .filter(line -> line.kind() == MaterialKind.PIPE)
                .mapToDouble(line -> line.quantity().si())
                .sum();
    }

    @Test
    void whatExistsCountsNothingAndWhatComesLaterIsApart() {
        Yard yard = yard("Old")
                .with(
                        mains("street", at(0, 0)).staticPressure(psi(60)),
                        TwoZones.plastic("old", polyline(at(0, 0), at(40, 0)), "1 in")
                                .from("street")
                                .existing(),
                        TwoZones.plastic("new", polyline(at(20, 0), at(20, 10)), "1 in")
                                .from("old"),
                        TwoZones.plastic("late", polyline(at(20, 10), at(20, 30)), "1 in")
                                .from("new")
                                .phase(Phase.LATER));
        TakeoffResult takeoff = TwoZones.takeoff(yard);
        assertEquals(Length.feet(10).metres(), quantity(takeoff, "pipe 1 in PVC Schedule 40", Phase.NOW), 1e-9);
        assertEquals(Length.feet(20).metres(), quantity(takeoff, "pipe 1 in PVC Schedule 40", Phase.LATER), 1e-9);
        assertEquals(1, quantity(takeoff, "tee 1 in PVC", Phase.NOW));
        assertEquals(1, quantity(takeoff, "slip coupling 1 in PVC", Phase.NOW));
        assertEquals(1, quantity(takeoff, "cap 1 in PVC", Phase.NOW), "where the pipe of later will go on");
        assertEquals(1, quantity(takeoff, "cap 1 in PVC", Phase.LATER), "at its end");
    }

    private static double quantity(TakeoffResult takeoff, String key, Phase phase) {
        return takeoff.lines().stream()
                .filter(line -> line.key().equals(key) && line.phase() == phase)
                .mapToDouble(line -> line.quantity().si())
                .sum();
    }
}
