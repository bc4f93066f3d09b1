package leat.script;

import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import leat.model.fault.LeatException;
import leat.model.plan.Parts;
import org.graalvm.polyglot.Context;
import org.graalvm.polyglot.Engine;
import org.graalvm.polyglot.EnvironmentAccess;
import org.graalvm.polyglot.HostAccess;
import org.graalvm.polyglot.PolyglotAccess;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.Source;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.io.IOAccess;
import org.graalvm.polyglot.proxy.ProxyArray;
import org.graalvm.polyglot.proxy.ProxyObject;

/**
 * Runs a JavaScript file. The script is a module: strict, with names of its own, free to import other modules of its
 * folder. All that it sees of the host are views, so the engine is given no access to the host whatsoever.
 */
public final class ScriptRunner {

    private static final String LANGUAGE = "js";

    /** Makes the prelude's names constant, and texts out of views where a text is wanted, as in {@code "at " + x}. */
    private static final String PREPARATION = """
            (sample) => {
              for (const name of Object.keys(globalThis)) {
                Object.defineProperty(globalThis, name, { writable: false, configurable: false });
              }
              Object.defineProperty(Object.getPrototypeOf(sample), Symbol.toPrimitive, {
                value(hint) { return hint === 'number' ? this.valueOf() : this.toString(); } });
            }
            """;

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
        Source script = Source.newBuilder(LANGUAGE, folder.read(name), name)
                .uri(folder.root().resolve(name).toUri())
                .mimeType("application/javascript+module")
                .buildLiteral();
        Settings settings = new Settings(request.settings());
        Guard guard = new Guard(request.limit());
        SessionFunctions session = new SessionFunctions(settings, folder, host, guard.progress(host));
        Prelude prelude = new Prelude(surface, vocabulary, session);
        Views views = new Views(surface, prelude.examples());
        SortedMap<String, Object> bindings = prelude.bindings(views);
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
        Context context = confined(folder);
        guard.watch(context);
        try {
            Value globals = context.getBindings(LANGUAGE);
            bindings.forEach(globals::putMember);
            Value arrayMaker = context.eval(LANGUAGE, "(elements) => Object.freeze(Array.from(elements))");
            views.makeArraysWith(arrayMaker::execute);
            context.eval(LANGUAGE, PREPARATION).execute(new Sample());
            context.eval(script);
        } catch (PolyglotException fault) {
            throw faults.of(fault, script, guard);
        } catch (OutOfMemoryError error) {
            throw faults.outOfMemory(error);
        } finally {
            guard.finish();
            context.close(true);
        }
    }

    private static Context confined(ScriptFolder folder) {
        return Context.newBuilder(LANGUAGE)
                .engine(Shared.ENGINE)
                .allowAllAccess(false)
                .allowHostAccess(HostAccess.NONE)
                .allowHostClassLoading(false)
                .allowPolyglotAccess(PolyglotAccess.NONE)
                .allowEnvironmentAccess(EnvironmentAccess.NONE)
                .allowCreateThread(false)
                .allowCreateProcess(false)
                .allowNativeAccess(false)
                .allowIO(IOAccess.newBuilder()
                        .fileSystem(new ConfinedFileSystem(folder))
                        .build())
                .allowExperimentalOptions(true) // for the options below, which only take away
                .option("js.strict", "true")
                .option("js.load", "false")
                .option("js.print", "false")
                .option("js.console", "false")
                .option("js.graal-builtin", "false")
                .option("js.polyglot-builtin", "false")
                .option("js.java-package-globals", "false")
                .option("js.shared-array-buffer", "false")
                .option("js.unhandled-rejections", "throw")
                .build();
    }

    /** One engine for the whole process, started by the first script: it keeps what it has learnt of the language. */
    private static final class Shared {
        static final Engine ENGINE = Engine.newBuilder(LANGUAGE)
                .option("engine.WarnInterpreterOnly", "false")
                .build();
    }

    /** Some foreign object, to reach the prototype that all views share. */
    private static final class Sample implements ProxyObject {

        @Override
        public Object getMember(String key) {
            return key;
        }

        @Override
        public Object getMemberKeys() {
            return ProxyArray.fromArray();
        }

        @Override
        public boolean hasMember(String key) {
            return false;
        }

        @Override
        public void putMember(String key, Value value) {
            throw new UnsupportedOperationException();
        }
    }
}
