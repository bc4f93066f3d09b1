package leat.model.fault;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the right name that a wrong one was probably meant to be. */
public final class Nearest {

    private Nearest() {}

    /** The candidate with the fewest edits, ties in their order; empty if none is near (a third of its letters off). */
    public static Optional<String> to(String wrong, Collection<String> candidates) {
        Optional<String> best = Optional.empty();
        int fewest = Integer.MAX_VALUE;
        for (String candidate : candidates) {
            int edits = edits(wrong.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            if (edits < fewest) {
                fewest = edits;
                best = Optional.of(candidate);
            }
        }
        int allowed = fewest;
        return best.filter(one -> allowed <= Math.max(1, Math.max(wrong.length(), one.length()) / 3));
    }

    /** The end of a message: {@code ; perhaps 'south wall'}, or nothing if no candidate is near. */
    public static String hint(String wrong, Collection<String> candidates) {
        return to(wrong, candidates).map(near -> "; perhaps '" + near + "'").orElse("");
    }

    /** Levenshtein distance in which two letters that changed places count once (restricted Damerau). */
    static int edits(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + same);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
