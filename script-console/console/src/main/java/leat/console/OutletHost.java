package leat.console;

import leat.script.ScriptHost;

/** Passes on what a session says. */
final class OutletHost implements ScriptHost {

    private final Outlet outlet;

    OutletHost(Outlet outlet) {
        this.outlet = outlet;
    }

    @Override
    public void print(String text) {
        outlet.result(text);
    }

    @Override
    public void note(String text) {
        outlet.message("leat: " + text);
    }

    @Override
    public void progress(double fraction, String what) {
        outlet.progress(fraction, what);
    }
}
