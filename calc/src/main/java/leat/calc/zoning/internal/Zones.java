package leat.calc.zoning.internal;

import java.util.Arrays;

/**
 * A partition that is being worked on: members, flow and spanning length of each zone, kept in step. Zones keep their
 * number when they run empty.
 */
final class Zones {

    final ZoneProblem problem;
    final int count;
    final int[] zoneOf;
    final int[][] members;
    final int[] size;
    final double[] flowM3PerS;
    final double[] lengthM;
    private final SpanningLength spanning;

    /** Zones that the last move or swap changed, with what they had before: most are undone. */
    private int changedA;

    private int changedB;
    private double flowAM3PerS;
    private double flowBM3PerS;
    private double lengthAM;
    private double lengthBM;

    /** @param zoneOf zone of each head, or -1 for a head that is none of this partition's business */
    Zones(ZoneProblem problem, int[] zoneOf, int count) {
        this.problem = problem;
        this.count = count;
        this.zoneOf = new int[problem.heads];
        this.members = new int[count][problem.heads];
        this.size = new int[count];
        this.flowM3PerS = new double[count];
        this.lengthM = new double[count];
        this.spanning = new SpanningLength(problem);
        assign(zoneOf);
    }

    void assign(int[] newZoneOf) {
        System.arraycopy(newZoneOf, 0, zoneOf, 0, zoneOf.length);
        Arrays.fill(size, 0);
        for (int head = 0; head < zoneOf.length; head++) {
            if (zoneOf[head] >= 0) {
                members[zoneOf[head]][size[zoneOf[head]]++] = head;
            }
        }
        for (int zone = 0; zone < count; zone++) {
            refresh(zone);
        }
    }

    /** Sums anew instead of adding and taking away, so that rounding does not pile up over a million moves. */
    private void refresh(int zone) {
        double flow = 0;
        for (int i = 0; i < size[zone]; i++) {
            flow += problem.flowM3PerS[members[zone][i]];
        }
        flowM3PerS[zone] = flow;
        lengthM[zone] = spanning.of(members[zone], size[zone]);
    }

    void move(int head, int toZone) {
        note(zoneOf[head], toZone);
        take(head);
        put(head, toZone);
        refresh(changedA);
        refresh(changedB);
    }

    /** Takes the head back from where the last {@link #move} put it. */
    void undoMove(int head) {
        take(head);
        put(head, changedA);
        restore();
    }

    void swap(int a, int b) {
        note(zoneOf[a], zoneOf[b]);
        exchange(a, b);
        refresh(changedA);
        refresh(changedB);
    }

    /** Undoes the last {@link #swap}. */
    void undoSwap(int a, int b) {
        exchange(a, b);
        restore();
    }

    private void exchange(int a, int b) {
        int zoneA = zoneOf[a];
        int zoneB = zoneOf[b];
        take(a);
        take(b);
        put(a, zoneB);
        put(b, zoneA);
    }

    private void note(int zoneA, int zoneB) {
        changedA = zoneA;
        changedB = zoneB;
        flowAM3PerS = flowM3PerS[zoneA];
        flowBM3PerS = flowM3PerS[zoneB];
        lengthAM = lengthM[zoneA];
        lengthBM = lengthM[zoneB];
    }

    private void restore() {
        flowM3PerS[changedA] = flowAM3PerS;
        flowM3PerS[changedB] = flowBM3PerS;
        lengthM[changedA] = lengthAM;
        lengthM[changedB] = lengthBM;
    }

    /** Members stay in order of their index, so that equal zones have equal sums to the bit. */
    private void take(int head) {
        int zone = zoneOf[head];
        int[] list = members[zone];
        int at = 0;
        while (list[at] != head) {
            at++;
        }
        System.arraycopy(list, at + 1, list, at, size[zone] - at - 1);
        size[zone]--;
    }

    private void put(int head, int zone) {
        int[] list = members[zone];
        int at = size[zone]++;
        while (at > 0 && list[at - 1] > head) {
            list[at] = list[at - 1];
            at--;
        }
        list[at] = head;
        zoneOf[head] = zone;
    }

    boolean canMove(int head, int toZone) {
        return problem.fits(flowM3PerS[toZone] + problem.flowM3PerS[head], size[toZone] + 1);
    }

    boolean canSwap(int a, int b) {
        double difference = problem.flowM3PerS[a] - problem.flowM3PerS[b];
        return flowM3PerS[zoneOf[a]] - difference <= problem.capacityM3PerS
                && flowM3PerS[zoneOf[b]] + difference <= problem.capacityM3PerS;
    }

    int usedCount() {
        int used = 0;
        for (int zone = 0; zone < count; zone++) {
            used += size[zone] > 0 ? 1 : 0;
        }
        return used;
    }

    double costM() {
        return problem.zoneCostM * usedCount() + pipeM() + loadCostM();
    }

    /** What zones cost for being full: with the square of their share of the most flow, so that equal shares cost least. */
    private double loadCostM() {
        double sum = 0;
        for (int zone = 0; zone < count; zone++) {
            double share = flowM3PerS[zone] / problem.capacityM3PerS;
            sum += share * share;
        }
        return problem.loadCostM * sum;
    }

    double pipeM() {
        double sum = 0;
        for (int zone = 0; zone < count; zone++) {
            sum += lengthM[zone];
        }
        return sum;
    }
}
