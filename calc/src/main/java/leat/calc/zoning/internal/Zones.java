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
        int fromZone = zoneOf[head];
        take(head);
        put(head, toZone);
        refresh(fromZone);
        refresh(toZone);
    }

    void swap(int a, int b) {
        int zoneA = zoneOf[a];
        int zoneB = zoneOf[b];
        take(a);
        take(b);
        put(a, zoneB);
        put(b, zoneA);
        refresh(zoneA);
        refresh(zoneB);
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
        return problem.zoneCostM * usedCount() + pipeM();
    }

    double pipeM() {
        double sum = 0;
        for (int zone = 0; zone < count; zone++) {
            sum += lengthM[zone];
        }
        return sum;
    }
}
