package leat.model.id;

/** Text order in which runs of digits count as numbers: R2 before R10, and never equal for different texts. */
public final class NaturalOrder {

    private NaturalOrder() {}

    public static int compare(String a, String b) {
        int i = 0;
        int j = 0;
        while (i < a.length() && j < b.length()) {
            int endA = endOfRun(a, i);
            int endB = endOfRun(b, j);
            int order = compareRuns(a.substring(i, endA), b.substring(j, endB));
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

    private static int endOfRun(String text, int start) {
        boolean digits = isDigit(text.charAt(start));
        int end = start + 1;
        while (digits && end < text.length() && isDigit(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static int compareRuns(String a, String b) {
        if (!isDigit(a.charAt(0)) || !isDigit(b.charAt(0))) {
            return a.compareTo(b);
        }
        String digitsA = a.replaceFirst("^0+(?=.)", "");
        String digitsB = b.replaceFirst("^0+(?=.)", "");
        int byLength = Integer.compare(digitsA.length(), digitsB.length());
        return byLength != 0 ? byLength : digitsA.compareTo(digitsB);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
