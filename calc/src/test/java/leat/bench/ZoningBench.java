package leat.bench;

import java.util.Arrays;
import java.util.List;
import leat.calc.zoning.internal.ZonePlan;
import leat.calc.zoning.internal.ZoneProblem;
import leat.calc.zoning.internal.ZoneSplit;
import tools.jackson.databind.JsonNode;

/**
 * Heads into zones: fewest zones, then least pipe, all from a manifold at the origin. Few heads, so that trying all sets of
 * them can prove the answer.
 */
final class ZoningBench implements Bench {

    private static final int HEADS = 15;
    private static final long MOVES = 20_000;
    private static final double CAPACITY_L_PER_H = 1500;
    private static final int MOST_HEADS = 6;
    private static final double ZONE_COST_M = 1000;

    @Override
    public String name() {
        return "zoning";
    }

    @Override
    public String defaultInstance() {
        return "c_coverage_60.json";
    }

    @Override
    public Contest contest(JsonNode json) {
        CoverageInstance all = CoverageInstance.read(json, 1);
        int heads = Math.min(HEADS, all.heads());
        double[] flow = Arrays.copyOf(all.flowLPerH(), heads);
        double[] xM = Arrays.copyOf(all.xM(), heads);
        double[] yM = Arrays.copyOf(all.yM(), heads);
        return new Contest(new Ours(flow, xM, yM), List.of(new SubsetRival(flow, xM, yM)));
    }

    private static Answer answer(double costM) {
        return new Answer().figure("cost_m", costM, 1e-9, 0);
    }

    private static final class Ours implements Entrant {
        private final ZoneProblem problem;
        private double costM;

        Ours(double[] flow, double[] xM, double[] yM) {
            var limits = new ZoneProblem.Limits(CAPACITY_L_PER_H, MOST_HEADS, ZONE_COST_M, 0);
            problem = ZoneProblem.straight(flow, new int[flow.length], xM, yM, 0, 0, limits);
        }

        @Override
        public String name() {
            return "leat";
        }

        @Override
        public double solve() {
            ZonePlan plan = ZoneSplit.solve(problem, 1, MOVES, () -> false);
            costM = plan.costM();
            return costM;
        }

        @Override
        public Answer answer() {
            return ZoningBench.answer(costM);
        }
    }

    /** The exact recursion over all sets of heads: the cheapest way to part a set takes one zone with its first head. */
    private static final class SubsetRival implements Entrant {
        private final double[] flow;
        private final double[] xM;
        private final double[] yM;
        private double costM;

        SubsetRival(double[] flow, double[] xM, double[] yM) {
            this.flow = flow;
            this.xM = xM;
            this.yM = yM;
        }

        @Override
        public String name() {
            return "recursion-over-all-sets";
        }

        @Override
        public double solve() {
            int sets = 1 << flow.length;
            double[] zoneM = new double[sets];
            for (int set = 1; set < sets; set++) {
                zoneM[set] = isAllowed(set) ? ZONE_COST_M + spanningM(set) : Double.POSITIVE_INFINITY;
            }
            double[] bestM = new double[sets];
            for (int set = 1; set < sets; set++) {
                int first = Integer.lowestOneBit(set);
                bestM[set] = Double.POSITIVE_INFINITY;
                for (int zone = set; zone > 0; zone = (zone - 1) & set) {
                    if ((zone & first) != 0) {
                        bestM[set] = Math.min(bestM[set], zoneM[zone] + bestM[set ^ zone]);
                    }
                }
            }
            costM = bestM[sets - 1];
            return costM;
        }

        private boolean isAllowed(int set) {
            double sum = 0;
            for (int i = 0; i < flow.length; i++) {
                sum += (set >> i & 1) == 1 ? flow[i] : 0;
            }
            return Integer.bitCount(set) <= MOST_HEADS && sum <= CAPACITY_L_PER_H;
        }

        private double spanningM(int set) {
            double[] nearestM = new double[flow.length];
            for (int i = 0; i < flow.length; i++) {
                nearestM[i] = Math.hypot(xM[i], yM[i]);
            }
            double sum = 0;
            for (int left = set; left != 0; ) {
                int next = Integer.numberOfTrailingZeros(left);
                for (int i = next + 1; i < flow.length; i++) {
                    next = (left >> i & 1) == 1 && nearestM[i] < nearestM[next] ? i : next;
                }
                left &= ~(1 << next);
                sum += nearestM[next];
                for (int i = 0; i < flow.length; i++) {
                    nearestM[i] = Math.min(nearestM[i], Math.hypot(xM[i] - xM[next], yM[i] - yM[next]));
                }
            }
            return sum;
        }

        @Override
        public Answer answer() {
            return ZoningBench.answer(costM);
        }
    }
}
