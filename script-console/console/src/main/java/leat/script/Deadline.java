package leat.script;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import org.graalvm.polyglot.Context;

/**
 * Stops a script that runs too long: first our own calculations through {@link #passed()}, then the script by
 * interrupting it, and, should it swallow that, by closing its context under it.
 */
final class Deadline implements AutoCloseable {

    private static final Duration GRACE = Duration.ofSeconds(1);

    private final AtomicBoolean passed = new AtomicBoolean();
    private final CountDownLatch finished = new CountDownLatch(1);

    /** Starts counting; a zero {@code limit} never passes. */
    Deadline(Duration limit, Context context) {
        if (!limit.isZero()) {
            Thread watch = new Thread(() -> watch(limit, context), "leat-script-deadline");
            watch.setDaemon(true);
            watch.start();
        }
    }

    boolean passed() {
        return passed.get();
    }

    private void watch(Duration limit, Context context) {
        try {
            if (!finished.await(limit.toNanos(), TimeUnit.NANOSECONDS)) {
                passed.set(true);
                stop(context);
            }
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
        }
    }

    private void stop(Context context) throws InterruptedException {
        try {
            context.interrupt(GRACE);
            // A script may catch the interrupt and go on; it gets no second chance.
            if (!finished.await(GRACE.toMillis(), TimeUnit.MILLISECONDS)) {
                context.close(true);
            }
        } catch (TimeoutException stubborn) {
            context.close(true);
        }
    }

    @Override
    public void close() {
        finished.countDown();
    }
}
