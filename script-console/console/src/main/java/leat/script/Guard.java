package leat.script;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import leat.calc.Progress;
import org.jspecify.annotations.Nullable;

/**
 * Keeps a script within its time and the process within its memory. When either is used up, our own calculations are
 * told through {@link #stopped()}, then the script is interrupted, then its session is taken from under it. All three can
 * fail to reach a script that is made to resist (endless recursion with {@code finally}, say), so the caller waits
 * only so long for the thread it runs on.
 */
final class Guard {

    /** Why a script had to be stopped. */
    private enum Cause {
        NONE,
        TIME,
        MEMORY,
        CALLER
    }

    private static final Duration OF_A_SCRIPT = Duration.ofMillis(500);

    /** More patience: who stops an entry of a session wants to keep the session. */
    private static final Duration OF_AN_ENTRY = Duration.ofSeconds(2);

    private static final Duration LOOK = Duration.ofMillis(50);

    /** Of the heap, still in use after a collection; beyond it the process would soon do nothing but collect. */
    private static final double MOST_IN_USE = 0.9;

    /** Room for deep but honest recursion. */
    private static final long STACK_BYTES = 32L << 20;

    private final Duration limit;
    private final Duration grace;
    private final CountDownLatch finished = new CountDownLatch(1);
    private volatile Cause cause = Cause.NONE;

    private Guard(Duration limit, Duration grace) {
        this.limit = limit;
        this.grace = grace;
    }

    /** For a script that is run once; a zero {@code limit} is never over. */
    static Guard ofScript(Duration limit) {
        return new Guard(limit, OF_A_SCRIPT);
    }

    /** For one entry of a session; a zero {@code limit} is never over. */
    static Guard ofEntry(Duration limit) {
        return new Guard(limit, OF_AN_ENTRY);
    }

    boolean stopped() {
        return cause != Cause.NONE;
    }

    /** Why the script was stopped, for a message. */
    String why() {
        return switch (cause) {
            case TIME -> "stopped: the script ran longer than " + seconds(limit);
            case MEMORY -> "stopped: the script needs more memory than there is";
            case CALLER, NONE -> "stopped";
        };
    }

    private static String seconds(Duration limit) {
        double seconds = limit.toMillis() / 1000.0;
        return (seconds == Math.rint(seconds) ? String.valueOf((long) seconds) : String.valueOf(seconds)) + " s";
    }

    /** How calculations learn that they should stop; news goes on to the host. */
    Progress progress(ScriptHost host) {
        return new Progress() {
            @Override
            public boolean stopped() {
                return Guard.this.stopped();
            }

            @Override
            public void at(double fraction, String what) {
                host.progress(fraction, what);
            }
        };
    }

    /**
     * Runs the task on a thread of its own.
     *
     * @return false if it had to be left behind, still running or broken beyond telling why
     */
    boolean run(Runnable task) {
        FutureTask<Void> future = new FutureTask<>(task, null);
        Thread thread = start("leat-script", future);
        try {
            while (thread.isAlive() || future.isDone()) {
                if (finishedWithin(LOOK.multipliedBy(2), future)) {
                    return true;
                }
                if (stopped() && finishedWithin(grace.multipliedBy(3), future)) {
                    return true;
                }
                if (stopped()) {
                    return false;
                }
            }
            cause = Cause.MEMORY; // a thread that dies without an outcome had no memory left to state it
            return false;
        } catch (InterruptedException asked) {
            cause = Cause.CALLER;
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static boolean finishedWithin(Duration time, FutureTask<Void> future) throws InterruptedException {
        try {
            future.get(time.toMillis(), TimeUnit.MILLISECONDS);
            return true;
        } catch (TimeoutException stillRunning) {
            return false;
        } catch (ExecutionException failure) {
            throw unchecked(failure.getCause());
        }
    }

    private static RuntimeException unchecked(@Nullable Throwable cause) {
        if (cause instanceof Error error) {
            throw error;
        }
        return cause instanceof RuntimeException plain ? plain : new IllegalStateException(cause);
    }

    /** Starts to look after a script that is about to run. */
    void watch(Halt halt) {
        start("leat-script-guard", () -> watchUntilFinished(halt));
    }

    /** Somebody wants it to end now. */
    void stop() {
        if (!stopped()) {
            cause = Cause.CALLER;
        }
    }

    /** The script has ended: nothing is left to stop. */
    void finish() {
        finished.countDown();
    }

    private void watchUntilFinished(Halt halt) {
        long leftMillis = limit.isZero() ? Long.MAX_VALUE : limit.toMillis();
        try {
            while (!finished.await(Math.min(leftMillis, LOOK.toMillis()), TimeUnit.MILLISECONDS)) {
                leftMillis -= LOOK.toMillis();
                if (stopped() || leftMillis <= 0 || isMemoryFull()) {
                    cause = stopped() ? cause : leftMillis <= 0 ? Cause.TIME : Cause.MEMORY;
                    stop(halt);
                    return;
                }
            }
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
        }
    }

    private void stop(Halt halt) throws InterruptedException {
        try {
            halt.interrupt(grace);
            // A script may catch the interrupt and go on; it gets no second chance.
            if (!finished.await(grace.toMillis(), TimeUnit.MILLISECONDS)) {
                halt.abandon();
            }
        } catch (TimeoutException stubborn) {
            halt.abandon();
        }
    }

    private static boolean isMemoryFull() {
        long inUse = 0;
        for (MemoryPoolMXBean pool : Pools.HEAP) {
            MemoryUsage usage = pool.getCollectionUsage();
            inUse += usage == null ? 0 : usage.getUsed();
        }
        return inUse > MOST_IN_USE * Runtime.getRuntime().maxMemory();
    }

    private static Thread start(String name, Runnable task) {
        Thread thread = new Thread(null, task, name, STACK_BYTES);
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    private static final class Pools {
        static final List<MemoryPoolMXBean> HEAP = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .toList();
    }
}
