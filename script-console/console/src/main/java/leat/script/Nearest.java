package leat.script;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that a writer most likely meant. */
final class Nearest {

    private Nearest() {}

    /**
     * The candidate nearest to {@code typed}, if one is near enough to be worth naming: at most one slip for each
     * three letters begun, upper and lower case being the same. Ties go to the name that sorts first.
     */
    static Optional<String> to(String typed, Collection<String> candidates) {
        int allowed = (typed.length() + 2) / 3;
        String best = null;
        int bestSlips = allowed + 1;
        for (String candidate : candidates.stream().sorted().toList()) {
            int slips = slips(typed.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            if (slips < bestSlips) {
                best = candidate;
                bestSlips = slips;
            }
        }
        return Optional.ofNullable(best);
    }

    /** " Did you mean X?" with a leading space, or nothing when no name is near. */
    static String hint(String typed, Collection<String> candidates) {
        return to(typed, candidates)
                .map(name -> "; did you mean " + name + "?")
                .orElse("");
    }

    /** Letters to insert, drop, replace or swap with a neighbour to get from one word to the other. */
    private static int slips(String from, String to) {
        int[][] cost = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(cost, from, to, i, j);
            }
        }
        return cost[from.length()][to.length()];
    }

    private static int cheapest(int[][] cost, String from, String to, int i, int j) {
        int replace = cost[i - 1][j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        int least = Math.min(replace, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
        boolean swapped = i > 1
                && j > 1
                && from.charAt(i - 1) == to.charAt(j - 2)
                && from.charAt(i - 2) == to.charAt(j - 1);
        return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
    }
}
