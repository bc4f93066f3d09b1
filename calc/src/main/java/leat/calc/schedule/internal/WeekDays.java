package leat.calc.schedule.internal;

/** Days of a week as bits, Monday the lowest. The week comes again and again: from Sunday to Monday is one day. */
public final class WeekDays {

    public static final int DAYS = 7;

    private WeekDays() {}

    public static boolean has(int days, int day) {
        return (days >> day & 1) == 1;
    }

    /** The longest wait from one of the days to the next, 1 to 7; 0 for no day at all. */
    public static int longestWait(int days) {
        int longest = 0;
        for (int day = 0; day < DAYS; day++) {
            if (has(days, day)) {
                int wait = 1;
                while (!has(days, (day + wait) % DAYS)) {
                    wait++;
                }
                longest = Math.max(longest, wait);
            }
        }
        return longest;
    }

    /**
     * The fewest of the allowed days between which no wait is longer than the interval, and of those the ones whose
     * busiest day is the least busy once this zone is added; then those with the shortest waits, then the earliest in the
     * week. All allowed days where even they leave too long a wait.
     *
     * @param allowed   at least one day
     * @param weekS     time that the zone runs in a week, spread evenly over its days
     * @param busyS     time that is taken already, by day
     */
    public static int choose(int allowed, int intervalDays, double weekS, double[] busyS) {
        int best = allowed;
        double bestBusyS = Double.POSITIVE_INFINITY;
        for (int days = 1; days < 1 << DAYS; days++) {
            boolean fits = (days & ~allowed) == 0 && longestWait(days) <= intervalDays;
            int fewer = Integer.bitCount(best) - Integer.bitCount(days);
            if (!fits || fewer < 0) {
                continue;
            }
            double mostS = busiestS(days, weekS, busyS);
            boolean isBetter =
                    fewer > 0 || mostS < bestBusyS || mostS == bestBusyS && longestWait(days) < longestWait(best);
            if (isBetter) {
                best = days;
                bestBusyS = mostS;
            }
        }
        return best;
    }

    private static double busiestS(int days, double weekS, double[] busyS) {
        double shareS = weekS / Integer.bitCount(days);
        double mostS = 0;
        for (int day = 0; day < DAYS; day++) {
            mostS = Math.max(mostS, busyS[day] + (has(days, day) ? shareS : 0));
        }
        return mostS;
    }
}
