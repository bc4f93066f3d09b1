package leat.command;

import java.nio.file.Path;
import java.util.SortedMap;
import leat.console.Outlet;

/** The console's words to the terminal, its files to the output folder. */
final class ConsoleOutlet implements Outlet {

    private final Terminal terminal;
    private final Ending ending;
    private final Path out;

    ConsoleOutlet(Terminal terminal, Ending ending, Path out) {
        this.terminal = terminal;
        this.ending = ending;
        this.out = out;
    }

    @Override
    public void result(String text) {
        terminal.result(text);
    }

    @Override
    public void message(String text) {
        terminal.message(text);
    }

    @Override
    public void progress(double fraction, String what) {
        terminal.progress(fraction, what);
    }

    @Override
    public void clearProgress() {
        terminal.clearProgress();
    }

    @Override
    public void write(SortedMap<String, byte[]> files) {
        ending.write(out, files);
    }

    @Override
    public String red(String text) {
        return terminal.red(text);
    }

    @Override
    public String yellow(String text) {
        return terminal.yellow(text);
    }
}
