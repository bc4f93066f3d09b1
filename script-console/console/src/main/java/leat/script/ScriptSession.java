package leat.script;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import leat.calc.assess.Assessment;

/**
 * A script that is typed entry by entry. What an entry names stays for the entries after it; an entry that fails or is
 * interrupted leaves the names before it as they were. One thread at a time, but for {@link #interrupt}.
 */
public interface ScriptSession extends AutoCloseable {

    /** False if more lines must follow before the text means anything: an open bracket, text or comment. */
    boolean isComplete(String text);

    /**
     * Runs an entry.
     *
     * @param line the number of its first line, for messages; the first of all lines is 1
     * @return its value as a person reads it; nothing if it has none
     * @throws ScriptFailedException if the entry has a mistake, fails, is interrupted or takes too long
     */
    Optional<String> run(String text, int line);

    /** What could stand at the cursor, given what stands before it. */
    Suggestions suggest(String text, int cursor);

    /** Ends the entry that is running, if one is; any thread may ask for it. */
    void interrupt();

    /** The files of the reports made since this was asked last; not yet written. */
    SortedMap<String, byte[]> takeFiles();

    /** The assessment made last. */
    Optional<Assessment> assessment();

    @Override
    void close();

    /** Possible continuations: each takes the place of the text from {@code from} up to the cursor. */
    record Suggestions(int from, List<Suggestion> list) {

        public Suggestions {
            list = List.copyOf(list);
        }

        /** Nothing to suggest at that cursor. */
        public static Suggestions none(int cursor) {
            return new Suggestions(cursor, List.of());
        }
    }

    /**
     * @param text  to put in
     * @param shown to the user among others: the name with its arguments, say
     */
    record Suggestion(String text, String shown) {}
}
