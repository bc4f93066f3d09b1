package leat.command;

import java.time.Duration;
import leat.model.fault.InvalidValueException;
import org.jspecify.annotations.Nullable;

/** What {@code --timeout} may be. */
final class TimeLimit {

    private TimeLimit() {}

    /** Nothing stated is no limit. */
    static Duration of(@Nullable Double seconds) {
        if (seconds == null) {
            return Duration.ZERO;
        }
        if (!(seconds >= 0.001 && seconds <= 1e6)) {
            throw new InvalidValueException("--timeout", "time", seconds + " s", "0.001 to 1,000,000 s");
        }
        return Duration.ofMillis(Math.round(seconds * 1000));
    }
}
