package leat.script;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.graalvm.polyglot.Context;
import org.jspecify.annotations.Nullable;

/**
 * The time that a script may take. When it is over, our own calculations are told through {@link #passed()}, then the
 * script is interrupted, then its context is closed under it. All three can fail to reach a script that is made to
 * resist (endless recursion with {@code finally}, say), so the caller waits only so long for the thread it runs on.
 */
final class Deadline {

    private static final Duration GRACE = Duration.ofMillis(500);

    /** Room for deep but honest recursion. */
    private static final long STACK_BYTES = 32L << 20;

    private final Duration limit;
    private final CountDownLatch finished = new CountDownLatch(1);
    private volatile boolean passed;

    /** A zero {@code limit} never passes. */
    Deadline(Duration limit) {
        this.limit = limit;
    }

    boolean passed() {
        return passed;
    }

    /**
     * Runs the task on a thread of its own.
     *
     * @return false if it had to be left behind, still running
     */
    boolean run(Runnable task) {
        FutureTask<Void> future = new FutureTask<>(task, null);
        start("leat-script", future);
        try {
            if (limit.isZero()) {
                future.get();
            } else {
                future.get(limit.plus(GRACE.multipliedBy(3)).toMillis(), TimeUnit.MILLISECONDS);
            }
            return true;
        } catch (TimeoutException stubborn) {
            return false;
        } catch (InterruptedException asked) {
            passed = true;
            Thread.currentThread().interrupt();
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

    /** Starts counting against a script that is about to run. */
    void watch(Context context) {
        if (!limit.isZero()) {
            start("leat-script-deadline", () -> stopWhenOver(context));
        }
    }

    /** The script has ended: nothing is left to stop. */
    void finish() {
        finished.countDown();
    }

    private void stopWhenOver(Context context) {
        try {
            if (finished.await(limit.toMillis(), TimeUnit.MILLISECONDS)) {
                return;
            }
            passed = true;
            context.interrupt(GRACE);
            // A script may catch the interrupt and go on; it gets no second chance.
            if (!finished.await(GRACE.toMillis(), TimeUnit.MILLISECONDS)) {
                context.close(true);
            }
        } catch (TimeoutException stubborn) {
            context.close(true);
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
        }
    }

    private static void start(String name, Runnable task) {
        Thread thread = new Thread(null, task, name, STACK_BYTES);
        thread.setDaemon(true);
        thread.start();
    }
}
