package leat.console;

import java.util.List;
import leat.script.ScriptSession.Suggestions;
import org.jline.reader.CompletingParsedLine;

/** An entry for JLine: one word, the one at the cursor that a suggestion would take the place of. */
final class EntryLine implements CompletingParsedLine {

    private final String text;
    private final int cursor;
    private final Suggestions suggestions;

    EntryLine(String text, int cursor, Suggestions suggestions) {
        this.text = text;
        this.cursor = cursor;
        this.suggestions = suggestions;
    }

    Suggestions suggestions() {
        return suggestions;
    }

    @Override
    public String word() {
        return text.substring(suggestions.from(), cursor);
    }

    @Override
    public int wordCursor() {
        return cursor - suggestions.from();
    }

    @Override
    public int wordIndex() {
        return 0;
    }

    @Override
    public List<String> words() {
        return List.of(word());
    }

    @Override
    public String line() {
        return text;
    }

    @Override
    public int cursor() {
        return cursor;
    }

    /** Nothing is escaped: a suggestion goes into the text as it is. */
    @Override
    public CharSequence escape(CharSequence candidate, boolean complete) {
        return candidate;
    }

    @Override
    public int rawWordCursor() {
        return wordCursor();
    }

    @Override
    public int rawWordLength() {
        return wordCursor();
    }
}
