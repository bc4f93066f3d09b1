package leat.script;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import leat.model.fault.LeatException;
import leat.script.toy.Words;

/** Runs scripts in a folder and keeps what they print. */
final class Trial {

    private final Path folder;
    private final List<String> printed = new ArrayList<>();

    private final ScriptRunner runner;

    private Trial(Path folder, ScriptRunner runner) {
        this.folder = folder;
        this.runner = runner;
    }

    static Trial ofToys(Path folder) {
        return new Trial(folder, new ScriptRunner(Surface.of("leat.script.toy"), List.of(Words.class)));
    }

    static Trial ofLeat(Path folder) {
        return new Trial(folder, ScriptRunner.ofLeat());
    }

    /** What the script prints; then, if it fails, the message. */
    String run(String script) {
        return run(script, request -> request);
    }

    String run(String script, UnaryOperator<ScriptRequest> change) {
        printed.clear();
        try {
            Path file = Files.writeString(folder.resolve("garden.js"), script);
            runner.run(change.apply(ScriptRequest.of(file)), new Listener());
        } catch (LeatException failure) {
            printed.add(failure.getMessage().replace(folder + "/", ""));
        } catch (IOException failure) {
            throw new AssertionError(failure);
        }
        return String.join("\n", printed);
    }

    private final class Listener implements ScriptHost {

        @Override
        public void print(String text) {
            printed.add(text);
        }

        @Override
        public void note(String text) {
            printed.add("note: " + text);
        }

        @Override
        public void progress(double fraction, String what) {
            // how far a calculation is depends on its inside
        }
    }
}
