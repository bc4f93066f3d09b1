package leat.script;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import leat.calc.assess.Assessment;
import leat.model.plan.Parts;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.Source;
import org.graalvm.polyglot.Value;

/** A session in JavaScript, confined as a script in a file is. */
public final class JavaScriptSession implements ScriptSession {

    private final SessionRequest request;
    private final ScriptHost host;
    private final ScriptFolder folder;
    private final SessionFunctions functions;
    private final Surface surface;
    private final Prelude prelude;
    private final Help help;
    private final Views views;
    private final SortedMap<String, Object> bindings;
    private final Map<Source, Source> asTyped = new HashMap<>();
    private volatile Guard guard;
    private Confined confined;

    private JavaScriptSession(SessionRequest request, ScriptHost host, Surface surface, List<Class<?>> vocabulary) {
        this.request = request;
        this.host = host;
        this.folder = request.scriptFolder();
        this.guard = Guard.ofEntry(request.limit());
        UnitsSeen units = new UnitsSeen();
        this.surface = surface;
        this.prelude = new Prelude(surface, vocabulary);
        this.help = new Help(surface, prelude);
        this.functions = new SessionFunctions(
                new Settings(request.settings()), folder, host, new CurrentProgress(() -> guard, host), units, help);
        this.views = new Views(surface, prelude.examples(), units);
        this.bindings = prelude.bindings(views, functions);
        this.confined = opened();
    }

    /** Opens a session against the whole of Leat. */
    public static ScriptSession open(SessionRequest request, ScriptHost host) {
        return open(request, host, Surface.ofLeat(), List.of(Parts.class));
    }

    static ScriptSession open(SessionRequest request, ScriptHost host, Surface surface, List<Class<?>> vocabulary) {
        return new JavaScriptSession(request, host, surface, vocabulary);
    }

    private Confined opened() {
        Confined world = new Confined(folder);
        world.prepare(bindings, views);
        return world;
    }

    @Override
    public boolean isComplete(String text) {
        TopLevel topLevel = TopLevel.of(text);
        if (topLevel.isOpenAtEnd()) {
            return false;
        }
        try {
            confined.parse(source(topLevel.redeclarable(), 1));
            return true;
        } catch (PolyglotException fault) {
            return !fault.isIncompleteSource();
        }
    }

    @Override
    public Optional<String> run(String text, int line) {
        TopLevel topLevel = TopLevel.of(text);
        Source source = source(topLevel.redeclarable(), line);
        asTyped.put(source, source(text, line));
        Guard mine = Guard.ofEntry(request.limit());
        guard = mine;
        AtomicReference<String> shown = new AtomicReference<>();
        Faults faults = new Faults(request.asScript(), folder, names(), views, asTyped);
        Confined world = confined;
        boolean ended;
        try {
            ended = mine.run(
                    () -> evaluated(source, topLevel.names(), faults, mine).ifPresent(shown::set));
        } finally {
            renewIfLost();
        }
        if (!ended) {
            if (world == confined) {
                renew();
            }
            throw faults.leftBehind(mine);
        }
        return Optional.ofNullable(shown.get());
    }

    private Optional<String> evaluated(Source source, List<String> declared, Faults faults, Guard mine) {
        mine.watch(confined.halt());
        try {
            Value value = confined.evaluate(source);
            return isUndefined(value) ? brief(declared) : Optional.of(new ValueText(views, help).show(value));
        } catch (PolyglotException fault) {
            throw faults.of(fault, source, mine);
        } catch (OutOfMemoryError error) {
            throw faults.outOfMemory(error);
        } finally {
            mine.finish();
        }
    }

    private static boolean isUndefined(Value value) {
        return value.isNull() && value.toString().equals("undefined");
    }

    /** What was declared, one line a name. */
    private Optional<String> brief(List<String> declared) {
        String lines = declared.stream()
                .distinct()
                .filter(name -> confined.globals().hasMember(name))
                .map(name -> name + " = "
                        + new ValueText(views, help).brief(confined.globals().getMember(name)))
                .collect(Collectors.joining("\n"));
        return lines.isEmpty() ? Optional.empty() : Optional.of(lines);
    }

    private void renewIfLost() {
        if (confined.abandoned()) {
            renew();
        }
    }

    private void renew() {
        confined = opened();
        asTyped.clear();
        host.note(
                "the entry could not be stopped in peace; the session begins anew, without the names declared so far");
    }

    /** Lines are counted over the whole session, so empty ones stand for those before. */
    private Source source(String text, int line) {
        return Source.newBuilder(Confined.LANGUAGE, "\n".repeat(line - 1) + text, SessionRequest.NAME.toString())
                .uri(folder.root().resolve(SessionRequest.NAME).toUri())
                .buildLiteral();
    }

    private Set<String> names() {
        Set<String> names = new TreeSet<>(bindings.keySet());
        names.addAll(confined.globals().getMemberKeys());
        return names;
    }

    @Override
    public Suggestions suggest(String text, int cursor) {
        return new Completion(surface, prelude, folder, confined.globals()).at(text, cursor);
    }

    @Override
    public void interrupt() {
        guard.stop();
    }

    @Override
    public SortedMap<String, byte[]> takeFiles() {
        return functions.takeFiles();
    }

    @Override
    public Optional<Assessment> assessment() {
        return functions.outcome().assessment();
    }

    @Override
    public void close() {
        confined.close();
    }
}
