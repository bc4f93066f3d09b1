package leat.calc.takeoff.internal;

import java.util.Arrays;

/**
 * Fills one stick after the other as full as can be: each begins with the longest piece that is left, and the pieces
 * beside it are chosen so that least is left over (minimum bin slack of Gupta and Ho, 1999, in the form that keeps the
 * longest piece fixed).
 */
final class FullestStick {

    /** Ways tried for one stick before the best so far is taken; a stick holds few pieces, so this is seldom met. */
    private static final int MOST_TRIES = 20_000;

    private final double[] sortedM;
    private final double toleranceM;
    private final boolean[] used;
    private final boolean[] chosen;
    private boolean[] bestChosen;
    private double bestLeftM;
    private int triedCount;

    private FullestStick(double[] sortedM, double toleranceM) {
        this.sortedM = sortedM;
        this.toleranceM = toleranceM;
        used = new boolean[sortedM.length];
        chosen = new boolean[sortedM.length];
        bestChosen = new boolean[sortedM.length];
    }

    /** @param sortedM longest first */
    static int[] fill(double[] sortedM, double stockM, double toleranceM) {
        return new FullestStick(sortedM, toleranceM).all(stockM);
    }

    private int[] all(double stockM) {
        int[] stickOf = new int[sortedM.length];
        int stick = 0;
        for (int first = 0; first < sortedM.length; first++) {
            if (!used[first]) {
                used[first] = true;
                stickOf[first] = stick;
                bestLeftM = Double.POSITIVE_INFINITY;
                triedCount = 0;
                Arrays.fill(chosen, false);
                choose(first + 1, stockM - sortedM[first]);
                for (int i = first + 1; i < sortedM.length; i++) {
                    if (bestChosen[i]) {
                        used[i] = true;
                        stickOf[i] = stick;
                    }
                }
                stick++;
            }
        }
        return stickOf;
    }

    private void choose(int from, double leftM) {
        if (leftM < bestLeftM - toleranceM) {
            bestLeftM = leftM;
            bestChosen = chosen.clone();
        }
        for (int i = from; i < sortedM.length && bestLeftM > toleranceM && triedCount < MOST_TRIES; i++) {
            boolean repeats = i > from && sortedM[i] == sortedM[i - 1] && !used[i - 1]; // tried one like it just now
            if (!used[i] && !repeats && sortedM[i] <= leftM + toleranceM) {
                triedCount++;
                chosen[i] = true;
                choose(i + 1, leftM - sortedM[i]);
                chosen[i] = false;
            }
        }
    }
}
