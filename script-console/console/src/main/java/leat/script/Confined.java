package leat.script;

import java.time.Duration;
import java.util.SortedMap;
import java.util.concurrent.TimeoutException;
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
 * A world in which JavaScript runs and from which it reaches nothing: all that it sees of the host are views, so the
 * engine is given no access to the host whatsoever, and files of one folder only.
 */
final class Confined implements AutoCloseable {

    static final String LANGUAGE = "js";

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

    private final Context context;
    private volatile boolean abandoned;

    Confined(ScriptFolder folder) {
        context = contextFor(folder);
    }

    /** Gives the world its names; nothing that the script does later changes them. */
    void prepare(SortedMap<String, Object> bindings, Views views) {
        Value globals = globals();
        bindings.forEach(globals::putMember);
        Value arrayMaker = context.eval(LANGUAGE, "(elements) => Object.freeze(Array.from(elements))");
        views.makeArraysWith(arrayMaker::execute);
        views.nothingIs(context.eval(LANGUAGE, "undefined"));
        context.eval(LANGUAGE, PREPARATION).execute(new Sample());
    }

    Value evaluate(Source source) {
        return context.eval(source);
    }

    /** Reads the source without running it; throws what is wrong with its form. */
    void parse(Source source) throws PolyglotException {
        context.parse(source);
    }

    /** All names that the script can use, those of the language aside. */
    Value globals() {
        return context.getBindings(LANGUAGE);
    }

    /** True once a script that would not end had its world taken away. */
    boolean abandoned() {
        return abandoned;
    }

    Halt halt() {
        return new Halt() {
            @Override
            public void interrupt(Duration grace) throws TimeoutException {
                context.interrupt(grace);
            }

            @Override
            public void abandon() {
                abandoned = true;
                context.close(true);
            }
        };
    }

    @Override
    public void close() {
        context.close(true);
    }

    private static Context contextFor(ScriptFolder folder) {
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
