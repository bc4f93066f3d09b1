package leat.console;

import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;
import leat.calc.assess.Assessment;
import leat.script.ScriptSession;

/** A session that is opened while the user already types: the language needs a second to start. */
final class EarlySession implements ScriptSession {

    private final FutureTask<ScriptSession> opening;

    EarlySession(Supplier<ScriptSession> opener) {
        opening = new FutureTask<>(opener::get);
        Thread thread = new Thread(opening, "leat-session");
        thread.setDaemon(true);
        thread.start();
    }

    private ScriptSession session() {
        try {
            return opening.get();
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
            throw new CompletionException("interrupted while the session was opened", asked);
        } catch (ExecutionException failure) {
            if (failure.getCause() instanceof RuntimeException plain) {
                throw plain;
            }
            throw new CompletionException(failure.getCause());
        }
    }

    @Override
    public boolean isComplete(String text) {
        return session().isComplete(text);
    }

    @Override
    public Optional<String> run(String text, int line) {
        return session().run(text, line);
    }

    @Override
    public Suggestions suggest(String text, int cursor) {
        return session().suggest(text, cursor);
    }

    @Override
    public void interrupt() {
        if (opening.isDone()) {
            session().interrupt();
        }
    }

    @Override
    public SortedMap<String, byte[]> takeFiles() {
        return session().takeFiles();
    }

    @Override
    public Optional<Assessment> assessment() {
        return session().assessment();
    }

    @Override
    public void close() {
        session().close();
    }
}
