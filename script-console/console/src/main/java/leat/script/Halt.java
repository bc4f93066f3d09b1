package leat.script;

import java.time.Duration;
import java.util.concurrent.TimeoutException;

/** How a script that runs is stopped, by the means of its language. */
interface Halt {

    /**
     * Asks the script to end; what it has made stays.
     *
     * @throws TimeoutException if it still runs after that time
     */
    void interrupt(Duration grace) throws InterruptedException, TimeoutException;

    /** Takes from the script all that it runs on. */
    void abandon();
}
