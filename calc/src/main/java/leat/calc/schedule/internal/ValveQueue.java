package leat.calc.schedule.internal;

import java.util.Arrays;

/**
 * One day of a source whose valves open one after the other. A zone that soaks lets the others run meanwhile; of those
 * that may run, the one with the longest way still to go goes first, so that its soaking does not come last. Whole minutes,
 * as controllers count.
 */
public final class ValveQueue {

    private final int[] cycleMinutes;
    private final int[] soakMinutes;
    private final int[] left;
    private final int[] readyMinute;
    private final int[] zones;
    private final int[] starts;
    private int endMinute;

    /** Arrays are parallel, one entry a zone; a zone without cycles does not run. */
    public ValveQueue(int[] cycles, int[] cycleMinutes, int[] soakMinutes) {
        this.cycleMinutes = cycleMinutes.clone();
        this.soakMinutes = soakMinutes.clone();
        left = cycles.clone();
        readyMinute = new int[cycles.length];
        int openings = Arrays.stream(cycles).sum();
        zones = new int[openings];
        starts = new int[openings];
        for (int i = 0; i < openings; i++) {
            open(i);
        }
    }

    private void open(int opening) {
        int zone = next();
        int start = Math.max(endMinute, readyMinute[zone]);
        zones[opening] = zone;
        starts[opening] = start;
        endMinute = start + cycleMinutes[zone];
        readyMinute[zone] = endMinute + soakMinutes[zone];
        left[zone]--;
    }

    /** The one that can begin first; of several at once the one with the longest way to go, then the first. */
    private int next() {
        int best = -1;
        for (int zone = 0; zone < left.length; zone++) {
            if (left[zone] > 0 && (best < 0 || isBefore(zone, best))) {
                best = zone;
            }
        }
        return best;
    }

    private boolean isBefore(int zone, int other) {
        int start = Math.max(endMinute, readyMinute[zone]);
        int otherStart = Math.max(endMinute, readyMinute[other]);
        return start < otherStart || start == otherStart && toGo(zone) > toGo(other);
    }

    private int toGo(int zone) {
        return left[zone] * cycleMinutes[zone] + (left[zone] - 1) * soakMinutes[zone];
    }

    /** How many times a valve opens. */
    public int openings() {
        return zones.length;
    }

    /** Whose valve opens at that opening, in order of time. */
    public int zone(int opening) {
        return zones[opening];
    }

    /** When, from the beginning of the day's hours. */
    public int startMinute(int opening) {
        return starts[opening];
    }

    /** When the last valve has closed. */
    public int endMinute() {
        return endMinute;
    }
}
