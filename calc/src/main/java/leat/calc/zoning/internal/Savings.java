package leat.calc.zoning.internal;

/**
 * Starts with a zone for each head and joins, time after time, the two zones whose union saves most.
 *
 * @see "Esau, L. R. and Williams, K. C., On teleprocessing system design, part II, IBM Systems Journal 5, 1966 (method
 *     from memory; the saving here is of whole spanning trees)"
 */
final class Savings {

    private final ZoneProblem problem;
    private final SpanningLength spanning;

    Savings(ZoneProblem problem) {
        this.problem = problem;
        this.spanning = new SpanningLength(problem);
    }

    /** Fills {@code zoneOf} for heads of one kind and returns the number of zones. */
    int part(int[] heads, int[] zoneOf) {
        int zones = heads.length;
        int[][] members = new int[zones][];
        double[] flow = new double[zones];
        double[] length = new double[zones];
        double[] saving = new double[zones * zones];
        for (int z = 0; z < zones; z++) {
            members[z] = new int[] {heads[z]};
            flow[z] = problem.flowM3PerS[heads[z]];
            length[z] = spanning.of(members[z], 1);
        }
        for (int a = 0; a < zones; a++) {
            fillRow(a, members, flow, length, saving);
        }
        while (true) {
            int best = bestPair(members, saving);
            if (best < 0) {
                break;
            }
            int a = best / zones;
            int b = best % zones;
            members[a] = union(members[a], members[b]);
            members[b] = new int[0];
            flow[a] += flow[b];
            length[a] = spanning.of(members[a], members[a].length);
            fillRow(a, members, flow, length, saving);
        }
        return number(members, zoneOf);
    }

    private void fillRow(int a, int[][] members, double[] flow, double[] length, double[] saving) {
        int zones = members.length;
        for (int b = 0; b < zones; b++) {
            if (b == a || members[b].length == 0) {
                continue;
            }
            int at = Math.min(a, b) * zones + Math.max(a, b);
            saving[at] = Double.NEGATIVE_INFINITY;
            if (problem.fits(flow[a] + flow[b], members[a].length + members[b].length)) {
                int[] both = union(members[a], members[b]);
                saving[at] = problem.zoneCostM + length[a] + length[b] - spanning.of(both, both.length);
            }
        }
    }

    private static int bestPair(int[][] members, double[] saving) {
        int zones = members.length;
        int best = -1;
        for (int a = 0; a < zones; a++) {
            for (int b = a + 1; b < zones && members[a].length > 0; b++) {
                int at = a * zones + b;
                if (members[b].length > 0 && saving[at] > 0 && (best < 0 || saving[at] > saving[best])) {
                    best = at;
                }
            }
        }
        return best;
    }

    private static int[] union(int[] a, int[] b) {
        int[] both = new int[a.length + b.length];
        int i = 0;
        int j = 0;
        for (int at = 0; at < both.length; at++) {
            both[at] = j == b.length || (i < a.length && a[i] < b[j]) ? a[i++] : b[j++];
        }
        return both;
    }

    private static int number(int[][] members, int[] zoneOf) {
        int next = 0;
        for (int[] zone : members) {
            for (int head : zone) {
                zoneOf[head] = next;
            }
            next += zone.length > 0 ? 1 : 0;
        }
        return next;
    }
}
