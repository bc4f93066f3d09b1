package leat.script;

import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import leat.model.fault.LeatException;
import leat.model.plan.Parts;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.Source;

/**
 * Runs a JavaScript file. The script is a module: strict, with names of its own, free to import other modules of its
 * folder.
 */
public final class ScriptRunner {

    private final Surface surface;
    private final List<Class<?>> vocabulary;

    ScriptRunner(Surface surface, List<Class<?>> vocabulary) {
        this.surface = surface;
        this.vocabulary = List.copyOf(vocabulary);
    }

    /** Runs scripts against the whole of Leat. */
    public static ScriptRunner ofLeat() {
        return new ScriptRunner(Surface.ofLeat(), List.of(Parts.class));
    }

    /**
     * Runs the script to its end. Should it not end when its time is over, not even when told, it is left behind on
     * a thread that does not keep the process alive.
     *
     * @throws ScriptFailedException if the script has a mistake, fails, or runs longer than it may
     * @throws LeatException         if the script itself cannot be read, or a setting is not one of its own
     */
    public ScriptOutcome run(ScriptRequest request, ScriptHost host) {
        Path file = request.file().toAbsolutePath();
        ScriptFolder folder = ScriptFolder.of(file);
        String name = file.getFileName().toString();
        Source script = Source.newBuilder(Confined.LANGUAGE, folder.read(name), name)
                .uri(folder.root().resolve(name).toUri())
                .mimeType("application/javascript+module")
                .buildLiteral();
        Settings settings = new Settings(request.settings());
        Guard guard = Guard.ofScript(request.limit());
        UnitsSeen units = new UnitsSeen();
        Prelude prelude = new Prelude(surface, vocabulary);
        Help help = new Help(surface, prelude);
        SessionFunctions session = new SessionFunctions(settings, folder, host, guard.progress(host), units, help);
        Views views = new Views(surface, prelude.examples(), units);
        SortedMap<String, Object> bindings = prelude.bindings(views, session);
        Faults faults = new Faults(request, folder, bindings.keySet(), views);
        Runnable evaluation = () -> evaluate(folder, script, bindings, views, faults, guard);
        if (!guard.run(evaluation)) {
            throw faults.leftBehind(guard);
        }
        settings.refuseUnasked();
        return session.outcome();
    }

    private static void evaluate(
            ScriptFolder folder,
            Source script,
            SortedMap<String, Object> bindings,
            Views views,
            Faults faults,
            Guard guard) {
        try (Confined confined = new Confined(folder)) {
            guard.watch(confined.halt());
            confined.prepare(bindings, views);
            confined.evaluate(script);
        } catch (PolyglotException fault) {
            throw faults.of(fault, script, guard);
        } catch (OutOfMemoryError error) {
            throw faults.outOfMemory(error);
        } finally {
            guard.finish();
        }
    }
}
