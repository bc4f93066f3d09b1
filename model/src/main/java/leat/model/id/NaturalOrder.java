package leat.model.id;

/** Text order in which runs of digits count as numbers: R2 before R10, and never equal for different texts. */
public final class NaturalOrder {

    private NaturalOrder() {}

    public static int compare(String a, String b) {
        int common = Math.min(a.length(), b.length());
        int same = 0;
        while (same < common && a.charAt(same) == b.charAt(same)) {
            same++;
        }
        if (same == common) {
            return Integer.compare(a.length(), b.length()); // a number does not shrink by further digits
        }
        while (same > 0 && isDigit(a.charAt(same - 1))) {
            same--; // the number in which they differ may have begun before
        }
        return compareFrom(a, b, same);
    }

    private static int compareFrom(String a, String b, int from) {
        int i = from;
        int j = from;
        while (i < a.length() && j < b.length()) {
            int endA = endOfRun(a, i);
            int endB = endOfRun(b, j);
            int order = isDigit(a.charAt(i)) && isDigit(b.charAt(j))
                    ? compareNumbers(a, i, endA, b, j, endB)
                    : Character.compare(a.charAt(i), b.charAt(j));
            if (order != 0) {
                return order;
            }
            i = endA;
            j = endB;
        }
        int byRest = Integer.compare(a.length() - i, b.length() - j);
        // "R02" and "R2" are the same number but not the same name
        return byRest != 0 ? byRest : a.compareTo(b);
    }

    /** End of the run of digits that starts there; any other character is a run of its own. */
    private static int endOfRun(String text, int start) {
        int end = start + 1;
        if (isDigit(text.charAt(start))) {
            while (end < text.length() && isDigit(text.charAt(end))) {
                end++;
            }
        }
        return end;
    }

    /** Numbers of any length: without leading zeros the longer one is greater. Ids are compared often: no allocation. */
    private static int compareNumbers(String a, int startA, int endA, String b, int startB, int endB) {
        int i = afterZeros(a, startA, endA);
        int j = afterZeros(b, startB, endB);
        int byLength = Integer.compare(endA - i, endB - j);
        if (byLength != 0) {
            return byLength;
        }
        for (; i < endA; i++, j++) {
            int byDigit = Character.compare(a.charAt(i), b.charAt(j));
            if (byDigit != 0) {
                return byDigit;
            }
        }
        return 0;
    }

    private static int afterZeros(String digits, int start, int end) {
        int i = start;
        while (i < end && digits.charAt(i) == '0') {
            i++;
        }
        return i;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
