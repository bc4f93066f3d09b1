package leat.console;

import java.util.List;
import leat.script.ScriptSession;
import leat.script.ScriptSession.Suggestion;
import leat.script.ScriptSession.Suggestions;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.EOFError;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;

/** Tells JLine when an entry is whole and what could complete it. */
final class EntryParser implements Parser, Completer {

    private final ScriptSession session;

    EntryParser(ScriptSession session) {
        this.session = session;
    }

    /** @throws EOFError while lines must follow; JLine then asks for one more */
    @Override
    public ParsedLine parse(String text, int cursor, ParseContext context) {
        if (context == ParseContext.ACCEPT_LINE && !text.isBlank() && !session.isComplete(text)) {
            throw new EOFError(-1, -1, "the entry goes on");
        }
        boolean completes = context == ParseContext.COMPLETE;
        return new EntryLine(text, cursor, completes ? session.suggest(text, cursor) : Suggestions.none(cursor));
    }

    @Override
    public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
        for (Suggestion each : ((EntryLine) line).suggestions().list()) {
            candidates.add(new Candidate(each.text(), each.shown(), null, null, null, null, false));
        }
    }
}
