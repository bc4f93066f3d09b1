package leat.script;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.BiFunction;
import leat.model.fault.LeatException;
import leat.script.toy.Words;

/** Types entries into a session and keeps what comes of them. */
final class SessionTrial implements AutoCloseable, ScriptHost {

    private final List<String> said = new ArrayList<>();
    private final ScriptSession session;

    private SessionTrial(Path folder, Duration limit, BiFunction<SessionRequest, ScriptHost, ScriptSession> opener) {
        session = opener.apply(new SessionRequest(folder, new TreeMap<>(), limit), this);
    }

    static SessionTrial ofToys(Path folder) {
        return new SessionTrial(
                folder,
                Duration.ofSeconds(5),
                (request, host) ->
                        JavaScriptSession.open(request, host, Surface.of("leat.script.toy"), List.of(Words.class)));
    }

    static SessionTrial inJavaScript(Path folder) {
        return new SessionTrial(folder, Duration.ZERO, JavaScriptSession::open);
    }

    static SessionTrial inJava(Path folder) {
        return new SessionTrial(folder, Duration.ZERO, JavaSession::open);
    }

    static SessionTrial inJavaScript(Path folder, Duration limit) {
        return new SessionTrial(folder, limit, JavaScriptSession::open);
    }

    static SessionTrial inJava(Path folder, Duration limit) {
        return new SessionTrial(folder, limit, JavaSession::open);
    }

    ScriptSession session() {
        return session;
    }

    /** What the entry prints, then its value or what is wrong with it. */
    String type(String entry) {
        said.clear();
        try {
            session.run(entry, 1).ifPresent(said::add);
        } catch (LeatException mistake) {
            said.add(mistake.getMessage());
        }
        return String.join("\n", said);
    }

    @Override
    public void print(String text) {
        said.add(text);
    }

    @Override
    public void note(String text) {
        said.add("note: " + text);
    }

    @Override
    public void progress(double fraction, String what) {
        // how far a calculation is depends on its inside
    }

    @Override
    public void close() {
        session.close();
    }
}
