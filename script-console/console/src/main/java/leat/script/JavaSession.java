package leat.script;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import jdk.jshell.ExpressionSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.VarSnippet;
import leat.calc.assess.Assessment;
import leat.model.plan.Parts;

/** A session in Java; it is not confined. */
public final class JavaSession implements ScriptSession {

    private final SessionRequest request;
    private final ScriptHost host;
    private final ScriptFolder folder;
    private final Surface surface = Surface.ofLeat();
    private final Prelude prelude = new Prelude(surface, List.of(Parts.class));
    private final UnitsSeen units = new UnitsSeen();
    private final SessionFunctions functions;
    private volatile Guard guard;
    private JavaWorld world;

    private JavaSession(SessionRequest request, ScriptHost host) {
        this.request = request;
        this.host = host;
        this.folder = request.scriptFolder();
        this.guard = Guard.ofEntry(request.limit());
        this.functions = new SessionFunctions(
                new Settings(request.settings()),
                folder,
                host,
                new CurrentProgress(() -> guard, host),
                units,
                new Help(surface, prelude));
        this.world = opened();
    }

    /** Opens a session against the whole of Leat. */
    public static ScriptSession open(SessionRequest request, ScriptHost host) {
        return new JavaSession(request, host);
    }

    private JavaWorld opened() {
        return new JavaWorld(surface, prelude, functions, units);
    }

    @Override
    public boolean isComplete(String text) {
        String rest = text;
        while (!rest.isBlank()) {
            CompletionInfo next = world.java().analysis().analyzeCompletion(rest);
            if (next.completeness() == Completeness.EMPTY) {
                return true;
            }
            if (!next.completeness().isComplete()) {
                return false;
            }
            rest = next.remaining();
        }
        return true;
    }

    @Override
    public Optional<String> run(String text, int line) {
        Guard mine = Guard.ofEntry(request.limit());
        guard = mine;
        List<String> shown = new ArrayList<>();
        boolean ended = mine.run(() -> evaluate("\n".repeat(line - 1) + text, mine, shown));
        if (!ended) {
            world.close();
            world = opened();
            host.note(
                    "the entry could not be stopped in peace; the session begins anew, without the names declared so far");
            throw new ScriptFailedException(SessionRequest.NAME + ": " + mine.why());
        }
        return shown.isEmpty() ? Optional.empty() : Optional.of(String.join("\n", shown));
    }

    private void evaluate(String text, Guard mine, List<String> shown) {
        CountDownLatch done = new CountDownLatch(1);
        mine.watch(world.java().halt(done));
        try {
            world.text().run(text, SessionRequest.NAME.toString(), mine, snippet -> show(snippet, shown));
        } finally {
            done.countDown();
            mine.finish();
        }
    }

    private void show(Snippet snippet, List<String> shown) {
        Snippet.Status status = world.java().shell().status(snippet);
        if (status == Snippet.Status.RECOVERABLE_DEFINED || status == Snippet.Status.RECOVERABLE_NOT_DEFINED) {
            String missing = world.java()
                    .shell()
                    .unresolvedDependencies((jdk.jshell.DeclarationSnippet) snippet)
                    .collect(Collectors.joining(", "));
            shown.add("this is kept; it can be used when there is " + missing);
        } else if (snippet instanceof VarSnippet variable) {
            boolean named = variable.subKind() != Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND;
            boolean hasValue = variable.subKind() != Snippet.SubKind.VAR_DECLARATION_SUBKIND;
            if (hasValue) {
                show(variable.name(), named, shown);
            }
        } else if (snippet instanceof ExpressionSnippet expression) {
            show(expression.name(), expression.subKind() != Snippet.SubKind.VAR_VALUE_SUBKIND, shown);
        }
    }

    private void show(String name, boolean brief, List<String> shown) {
        Object value = world.java().valueOf(name);
        if (value == null) {
            shown.add(brief ? name + " = none" : "none");
            return;
        }
        units.see(value);
        Display display = new Display(units.last());
        shown.add(brief ? name + " = " + display.brief(value) : display.show(value));
    }

    @Override
    public Suggestions suggest(String text, int cursor) {
        return new JavaCompletion(world.java(), prelude, folder).at(text, cursor);
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
        world.close();
    }
}
