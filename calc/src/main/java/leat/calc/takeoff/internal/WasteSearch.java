package leat.calc.takeoff.internal;

import java.util.Arrays;

/**
 * Looks for a cut into a given number of sticks. Their whole length less that of the pieces may be left over and no more,
 * so each stick is begun with the longest piece that is left, completed in all ways that leave no more than what is still
 * allowed, the fullest first, and closed. (Bin completion, after Korf, Proceedings of AAAI 2002.)
 */
final class WasteSearch {

    enum Outcome {
        FOUND,
        /** Every way was tried. */
        IMPOSSIBLE,
        /** The steps ran out. */
        OPEN
    }

    private final double[] sortedM;
    private final double stockM;
    private final double toleranceM;
    private final int[] stickOf;
    private int stepsLeft;
    private boolean found;

    /** @param sortedM longest first */
    WasteSearch(double[] sortedM, double stockM, double toleranceM, int stepCount) {
        this.sortedM = sortedM;
        this.stockM = stockM;
        this.toleranceM = toleranceM;
        stickOf = new int[sortedM.length];
        stepsLeft = stepCount;
    }

    Outcome tryCount(int stickCount) {
        Arrays.fill(stickOf, -1);
        found = false;
        double allowedM = stickCount * stockM - Arrays.stream(sortedM).sum();
        if (allowedM >= -toleranceM) {
            begin(0, 0, allowedM);
        }
        return found ? Outcome.FOUND : stepsLeft > 0 ? Outcome.IMPOSSIBLE : Outcome.OPEN;
    }

    /** For each piece the stick that it is cut from; after a cut was found. */
    int[] stickOf() {
        return stickOf.clone();
    }

    int stepsLeft() {
        return stepsLeft;
    }

    private void begin(int stick, int from, double allowedM) {
        int first = from;
        while (first < sortedM.length && stickOf[first] >= 0) {
            first++;
        }
        if (first == sortedM.length) {
            found = true;
            return;
        }
        stickOf[first] = stick;
        complete(stick, first, first + 1, stockM - sortedM[first], allowedM);
        if (!found) {
            stickOf[first] = -1;
        }
    }

    /** Puts more pieces into the stick, from the longest down, then closes it if what is left is allowed. */
    private void complete(int stick, int first, int from, double leftM, double allowedM) {
        double triedM = Double.NaN;
        for (int i = from; i < sortedM.length && !found && stepsLeft > 0; i++) {
            if (stickOf[i] < 0 && sortedM[i] <= leftM + toleranceM && sortedM[i] != triedM) {
                stepsLeft--;
                triedM = sortedM[i]; // another piece of this length would lead to the same cuts
                stickOf[i] = stick;
                complete(stick, first, i + 1, leftM - sortedM[i], allowedM);
                if (!found) {
                    stickOf[i] = -1;
                }
            }
        }
        if (!found && stepsLeft > 0 && leftM <= allowedM + toleranceM) {
            begin(stick + 1, first + 1, allowedM - Math.max(0, leftM));
        }
    }
}
