package leat.script;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import jdk.jshell.Diag;
import jdk.jshell.EvalException;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.StatementSnippet;
import jdk.jshell.UnresolvedReferenceException;

/** Runs Java that a user wrote, statement by statement, and says what is wrong with it at its place. */
final class JavaText {

    private final JavaShell java;
    private final JavaRewording rewording;
    private final Map<String, Spot> spots = new HashMap<>();

    JavaText(JavaShell java, JavaRewording rewording) {
        this.java = java;
        this.rewording = rewording;
    }

    /**
     * Runs the text to its end.
     *
     * @param file  what messages call it
     * @param after is told of each statement or declaration that went well
     * @throws ScriptFailedException at the first mistake
     */
    void run(String text, String file, Guard guard, Consumer<Snippet> after) {
        for (int at = start(text, 0); at < text.length(); ) {
            CompletionInfo next = java.analysis().analyzeCompletion(text.substring(at));
            boolean whole = next.source() != null && !next.source().isEmpty();
            int end = whole ? text.length() - next.remaining().length() : text.length();
            Spot spot = new Spot(text, at, end);
            Snippet done = evaluate(whole ? next.source() : text.substring(at), spot, file, guard);
            after.accept(done);
            at = start(text, end);
        }
    }

    /** Fails for a method or class that still lacks something; for the end of a file, after which nothing can come. */
    void refuseUnfinished(String file) {
        java.shell()
                .snippets()
                .filter(snippet -> spots.containsKey(snippet.id()))
                .forEach(snippet -> {
                    Snippet.Status status = java.shell().status(snippet);
                    if (status == Snippet.Status.RECOVERABLE_DEFINED
                            || status == Snippet.Status.RECOVERABLE_NOT_DEFINED) {
                        throw unfinished(snippet, file);
                    }
                });
    }

    private Snippet evaluate(String source, Spot spot, String file, Guard guard) {
        Optional<KeptVariable> kept = KeptVariable.before(source, java);
        SnippetEvent own = java.shell().eval(source).stream()
                .filter(event -> event.causeSnippet() == null)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no outcome of " + source));
        spots.put(own.snippet().id(), spot);
        if (own.exception() != null || guard.stopped()) {
            kept.ifPresent(KeptVariable::restore);
        }
        if (guard.stopped()) {
            throw failed(spot.show(file, "", guard.why()));
        }
        if (own.status() == Snippet.Status.REJECTED) {
            Diag fault = java.shell()
                    .diagnostics(own.snippet())
                    .filter(Diag::isError)
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("refused without a reason: " + source));
            JavaRewording.Plain plain = rewording.of(fault);
            int at = spot.start() + (int) (plain.atStart() ? fault.getStartPosition() : fault.getPosition());
            throw failed(within(spot, at, spot.start() + (int) fault.getEndPosition())
                    .show(file, plain.word(), plain.message()));
        }
        if (own.exception() instanceof UnresolvedReferenceException unresolved) {
            throw unfinished(unresolved.getSnippet(), file);
        }
        if (own.exception() instanceof EvalException fault) {
            throw thrown(fault, file, spot);
        }
        if (own.snippet() instanceof StatementSnippet
                && own.value() == null) { // what was run has at least an empty one
            throw failed(spot.show(
                    file, "", "Java's compiler broke down at this and nothing was done; say it in smaller steps"));
        }
        return own.snippet();
    }

    /** From the fault's own place on, so that the caret stands there; a position may lie at the very end. */
    private static Spot within(Spot spot, int from, int to) {
        int start = Math.min(from, spot.text().length());
        return new Spot(
                spot.text(), start, Math.max(start, Math.min(to, spot.text().length())));
    }

    private ScriptFailedException unfinished(Snippet snippet, String file) {
        JavaRewording.Plain plain = rewording.ofUnresolved(java.shell()
                .unresolvedDependencies((jdk.jshell.DeclarationSnippet) snippet)
                .toList());
        Spot spot = spots.get(snippet.id());
        return failed(spot == null ? plain.message() : spot.show(file, plain.word(), plain.message()));
    }

    /** The innermost line of the user's own text, and there the word that was called. */
    private RuntimeException thrown(EvalException fault, String file, Spot running) {
        StackTraceElement[] frames = fault.getStackTrace();
        for (int i = 0; i < frames.length; i++) {
            Optional<Spot> line = lineOf(frames[i]);
            if (line.isPresent()) {
                String word = i == 0 ? "" : frames[i - 1].getMethodName();
                return rewording.thrown(fault, message -> line.get().show(file, word, message));
            }
        }
        return rewording.thrown(fault, message -> running.show(file, "", message));
    }

    /** Frames of snippets name the snippet as their file: {@code #33:1} is line 1 of snippet 33. */
    private Optional<Spot> lineOf(StackTraceElement frame) {
        String name = String.valueOf(frame.getFileName());
        Spot spot = name.startsWith("#") ? spots.get(name.substring(1)) : null;
        if (spot == null) {
            return Optional.empty();
        }
        String text = spot.text().toString();
        int start = spot.start();
        for (int line = 1; line < frame.getLineNumber() && text.indexOf('\n', start) >= 0; line++) {
            start = text.indexOf('\n', start) + 1;
        }
        while (start < spot.end() && Character.isWhitespace(text.charAt(start))) {
            start++;
        }
        int end = text.indexOf('\n', start);
        return Optional.of(new Spot(text, start, end < 0 ? spot.end() : Math.min(end, spot.end())));
    }

    /** The next place that is neither space nor comment: a comment before an import would make it something else. */
    private static int start(String text, int from) {
        int at = from;
        while (at < text.length()) {
            if (Character.isWhitespace(text.charAt(at))) {
                at++;
            } else if (text.startsWith("//", at)) {
                int end = text.indexOf('\n', at);
                at = end < 0 ? text.length() : end;
            } else if (text.startsWith("/*", at) && text.indexOf("*/", at + 2) >= 0) {
                at = text.indexOf("*/", at + 2) + 2;
            } else {
                return at;
            }
        }
        return at;
    }

    static ScriptFailedException failed(String message) {
        return new ScriptFailedException(message);
    }

    /** What was thrown, for the stack trace of {@code --debug}. */
    static ScriptFailedException failed(String message, JShellException cause) {
        return new ScriptFailedException(message, cause);
    }
}
