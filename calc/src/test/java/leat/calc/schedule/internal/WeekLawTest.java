package leat.calc.schedule.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What holds for every choice of days and every order of valves. */
@Tag("law")
class WeekLawTest {

    private static final int MON_WED_FRI = 0b0010101;

    @Test
    void waitsRunThroughTheEndOfTheWeek() {
        assertEquals(3, WeekDays.longestWait(MON_WED_FRI));
        assertEquals(7, WeekDays.longestWait(0b0000001));
        assertEquals(1, WeekDays.longestWait(0b1111111));
        assertEquals(0, WeekDays.longestWait(0));
    }

    @RepeatedTest(200)
    void daysAreAllowedAndFewestAndKeepTheInterval(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        int allowed = 1 + random.nextInt(127);
        int interval = 1 + random.nextInt(9);
        double[] busyS = random.doubles(7, 0, 3600).toArray();
        int days = WeekDays.choose(allowed, interval, 3600, busyS);
        assertEquals(0, days & ~allowed);
        int fewest = 8;
        for (int some = 1; some < 128; some++) {
            if ((some & ~allowed) == 0 && WeekDays.longestWait(some) <= interval) {
                fewest = Math.min(fewest, Integer.bitCount(some));
            }
        }
        assertEquals(fewest == 8 ? Integer.bitCount(allowed) : fewest, Integer.bitCount(days));
        assertTrue(fewest == 8 || WeekDays.longestWait(days) <= interval);
    }

    @RepeatedTest(200)
    void valvesOpenOneByOneAndSoak(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        int zones = 1 + random.nextInt(8);
        int[] cycles = random.ints(zones, 0, 5).toArray();
        int[] minutes = random.ints(zones, 1, 30).toArray();
        int[] soak = random.ints(zones, 0, 60).toArray();
        ValveQueue queue = new ValveQueue(cycles, minutes, soak);
        List<List<Integer>> starts = new ArrayList<>();
        for (int zone = 0; zone < zones; zone++) {
            starts.add(new ArrayList<>());
        }
        int free = 0;
        for (int i = 0; i < queue.openings(); i++) {
            assertTrue(queue.startMinute(i) >= free);
            free = queue.startMinute(i) + minutes[queue.zone(i)];
            starts.get(queue.zone(i)).add(queue.startMinute(i));
        }
        assertEquals(free, queue.endMinute());
        int work = 0;
        int longest = 0;
        for (int zone = 0; zone < zones; zone++) {
            List<Integer> of = starts.get(zone);
            assertEquals(cycles[zone], of.size());
            for (int i = 1; i < of.size(); i++) {
                assertTrue(of.get(i) - of.get(i - 1) >= minutes[zone] + soak[zone]);
            }
            work += cycles[zone] * minutes[zone];
            longest = Math.max(longest, cycles[zone] * (minutes[zone] + soak[zone]) - soak[zone]);
        }
        assertTrue(queue.endMinute() >= Math.max(work, longest));
        assertTrue(queue.endMinute() <= work + Arrays.stream(soak).max().orElse(0) * 5 * zones);
    }

    @RepeatedTest(50)
    void theFittedPlaneHasTheSlopeOfThePlane(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        double east = random.nextDouble() - 0.5;
        double north = random.nextDouble() - 0.5;
        double[] xM = random.doubles(12, 0, 30).toArray();
        double[] yM = random.doubles(12, 0, 30).toArray();
        double[] heightM = new double[12];
        for (int i = 0; i < 12; i++) {
            heightM[i] = 3 + east * xM[i] + north * yM[i];
        }
        assertEquals(Math.hypot(east, north), PlaneFit.slope(xM, yM, heightM), 1e-9);
        assertEquals(0, PlaneFit.slope(new double[0], new double[0], new double[0]));
    }

    @RepeatedTest(100)
    void rainThatCanBeUsedIsNeitherMoreThanFallsNorThanIsUsed(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        double rain = 300 * random.nextDouble();
        double use = 250 * random.nextDouble();
        double storage = 5 + 195 * random.nextDouble();
        double effective = SoilWater.effectiveRainMm(rain, use, storage);
        assertTrue(effective >= 0 && effective <= Math.min(rain, use));
        assertTrue(SoilWater.effectiveRainMm(rain + 10, use, storage) >= effective);
        assertTrue(SoilWater.effectiveRainMm(rain, use + 10, storage) >= effective);
        assertTrue(SoilWater.effectiveRainMm(rain, use, storage + 5) >= effective - 1e-9);
    }
}
