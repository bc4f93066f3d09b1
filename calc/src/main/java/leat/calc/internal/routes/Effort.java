package leat.calc.internal.routes;

import java.util.function.BooleanSupplier;

/**
 * A purse of work. One unit is one edge looked at, so that the same purse buys the same search on any machine; asking
 * {@code stopped} is the only way to end early.
 */
public final class Effort {

    private final BooleanSupplier stopped;
    private long left;
    private boolean interrupted;

    public Effort(long edgesLookedAt, BooleanSupplier stopped) {
        this.left = edgesLookedAt;
        this.stopped = stopped;
    }

    void spend(long edgesLookedAt) {
        left -= edgesLookedAt;
    }

    /** Whether there is work left to spend and nobody has asked to stop. */
    boolean lasts() {
        interrupted = interrupted || stopped.getAsBoolean();
        return left > 0 && !interrupted;
    }

    /** Whether the caller asked to stop, as against the purse running out. */
    public boolean wasInterrupted() {
        return interrupted;
    }
}
