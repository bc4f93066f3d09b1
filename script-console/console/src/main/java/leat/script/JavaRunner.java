package leat.script;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import leat.model.fault.LeatException;
import leat.model.plan.Parts;

/**
 * Runs a file of Java statements with the words that a script in JavaScript has. Java is not confined: it can do
 * whatever the user can.
 */
public final class JavaRunner {

    private JavaRunner() {}

    /**
     * Runs the script to its end.
     *
     * @throws ScriptFailedException if the script has a mistake, fails, or runs longer than it may
     * @throws LeatException         if the script itself cannot be read, or a setting is not one of its own
     */
    public static ScriptOutcome run(ScriptRequest request, ScriptHost host) {
        Path file = request.file().toAbsolutePath();
        ScriptFolder folder = ScriptFolder.of(file);
        String text = folder.read(file.getFileName().toString());
        Settings settings = new Settings(request.settings());
        Guard guard = Guard.ofScript(request.limit());
        UnitsSeen units = new UnitsSeen();
        Surface surface = Surface.ofLeat();
        Prelude prelude = new Prelude(surface, List.of(Parts.class));
        Help help = new Help(surface, prelude);
        SessionFunctions functions = new SessionFunctions(settings, folder, host, guard.progress(host), units, help);
        try (JavaWorld world = new JavaWorld(surface, prelude, functions, units)) {
            String name = request.file().toString();
            boolean ended = guard.run(() -> {
                CountDownLatch done = new CountDownLatch(1);
                guard.watch(world.java().halt(done));
                try {
                    world.text().run(text, name, guard, snippet -> {});
                    world.text().refuseUnfinished(name);
                } finally {
                    done.countDown();
                    guard.finish();
                }
            });
            if (!ended) {
                throw new ScriptFailedException(name + ": " + guard.why());
            }
        }
        settings.refuseUnasked();
        return functions.outcome();
    }
}
