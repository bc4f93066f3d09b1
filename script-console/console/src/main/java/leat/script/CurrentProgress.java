package leat.script;

import java.util.function.Supplier;
import leat.calc.Progress;

/** How the calculations of a session learn that they should stop: from the guard of the entry that runs at the time. */
final class CurrentProgress implements Progress {

    private final Supplier<Guard> guard;
    private final ScriptHost host;

    CurrentProgress(Supplier<Guard> guard, ScriptHost host) {
        this.guard = guard;
        this.host = host;
    }

    @Override
    public boolean stopped() {
        return guard.get().stopped();
    }

    @Override
    public void at(double fraction, String what) {
        host.progress(fraction, what);
    }
}
