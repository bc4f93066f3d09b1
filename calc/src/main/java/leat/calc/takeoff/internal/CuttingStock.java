package leat.calc.takeoff.internal;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Cuts pieces from equal lengths of stock with as few lengths as can be found, and says how few it can be at best.
 * <p>
 * First-fit decreasing and fullest-stick-first each give a cut; if neither meets the bound, a search for one with so few
 * sticks goes on for a stated number of steps, and where it finds none the bound rises. The bound is L2 of Martello and Toth (Discrete
 * Applied Mathematics 28, 1990): pieces longer than half the stock each take one of their own. Ties go to the piece that
 * was given first, so the same pieces are always cut alike.
 */
public final class CuttingStock {

    /** Shorter than any saw cut; absorbs the rounding of sums of lengths. */
    private static final double SAME_LENGTH_M = 1e-6;

    private CuttingStock() {}

    /**
     * @param stickOf    for each piece, in the order given, the stick that it is cut from; sticks are numbered from 0
     * @param stickCount how many sticks
     * @param boundCount no cut needs fewer
     */
    public record Cut(int[] stickOf, int stickCount, int boundCount) {}

    /**
     * @param pieceM    each more than 0 and at most {@code stockM}
     * @param stepCount how long the search may go on where the first two cuts do not meet the bound
     */
    public static Cut cut(double[] pieceM, double stockM, int stepCount) {
        int[] order = longestFirst(pieceM);
        double[] sortedM = new double[pieceM.length];
        for (int i = 0; i < order.length; i++) {
            sortedM[i] = pieceM[order[i]];
        }
        int boundCount = bound(sortedM, stockM);
        int[] best = firstFit(sortedM, stockM);
        if (sticks(best) > boundCount) {
            best = fewer(best, FullestStick.fill(sortedM, stockM, SAME_LENGTH_M));
        }
        WasteSearch search = new WasteSearch(sortedM, stockM, SAME_LENGTH_M, stepCount);
        for (int count = boundCount; count < sticks(best) && search.stepsLeft() > 0; count++) {
            WasteSearch.Outcome outcome = search.tryCount(count);
            if (outcome == WasteSearch.Outcome.FOUND) {
                best = search.stickOf();
            } else if (outcome == WasteSearch.Outcome.IMPOSSIBLE) {
                boundCount = count + 1;
            }
        }
        int[] stickOf = new int[order.length];
        for (int i = 0; i < order.length; i++) {
            stickOf[order[i]] = best[i];
        }
        return new Cut(stickOf, sticks(best), boundCount);
    }

    /** First-fit: each piece, in the order given, from the first stick with room for it. */
    static int[] firstFit(double[] pieceM, double stockM) {
        int[] stickOf = new int[pieceM.length];
        double[] leftM = new double[pieceM.length];
        Arrays.fill(leftM, stockM);
        for (int i = 0; i < pieceM.length; i++) {
            int stick = 0;
            while (leftM[stick] + SAME_LENGTH_M < pieceM[i]) {
                stick++;
            }
            leftM[stick] -= pieceM[i];
            stickOf[i] = stick;
        }
        return stickOf;
    }

    /**
     * L2: for each length a up to half the stock, the pieces longer than stock − a stand alone, those longer than half
     * the stock too, and what pieces of at least a do not fit beside the latter needs more.
     *
     * @param sortedM longest first
     */
    static int bound(double[] sortedM, double stockM) {
        int best = sortedM.length == 0 ? 0 : rounded(Arrays.stream(sortedM).sum(), stockM);
        for (double a : sortedM) {
            if (a <= stockM / 2) {
                best = Math.max(best, boundAt(sortedM, stockM, a));
            }
        }
        return Math.max(best, boundAt(sortedM, stockM, 0));
    }

    private static int boundAt(double[] sortedM, double stockM, double a) {
        int aloneCount = 0;
        int halfCount = 0;
        double halfM = 0;
        double smallM = 0;
        for (double piece : sortedM) {
            if (piece > stockM - a + SAME_LENGTH_M) {
                aloneCount++;
            } else if (piece > stockM / 2 + SAME_LENGTH_M) {
                halfCount++;
                halfM += piece;
            } else if (piece >= a) {
                smallM += piece;
            }
        }
        double overM = smallM - (halfCount * stockM - halfM);
        return aloneCount + halfCount + Math.max(0, rounded(overM, stockM));
    }

    /** Sticks for so much length, forgiving what rounding may have added. */
    private static int rounded(double lengthM, double stockM) {
        return (int) Math.ceil((lengthM - SAME_LENGTH_M) / stockM);
    }

    static int sticks(int[] stickOf) {
        return Arrays.stream(stickOf).max().orElse(-1) + 1;
    }

    private static int[] fewer(int[] one, int[] other) {
        return sticks(other) < sticks(one) ? other : one;
    }

    private static int[] longestFirst(double[] pieceM) {
        return IntStream.range(0, pieceM.length)
                .boxed()
                .sorted((a, b) -> Double.compare(pieceM[b], pieceM[a])) // stable: ties stay in their order
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
