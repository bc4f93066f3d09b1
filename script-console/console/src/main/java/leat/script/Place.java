package leat.script;

import java.util.Optional;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.Source;
import org.graalvm.polyglot.SourceSection;
import org.jspecify.annotations.Nullable;

/** A stretch of a script, from character {@code start} up to but not including {@code end}. */
record Place(Source source, int start, int end) {

    /** A longer line is generated, and showing it would bury the message. */
    private static final int LONGEST_SHOWN = 200;

    /** Where the fault says it is, else the innermost place of the script that is known. */
    static Optional<Place> of(PolyglotException fault) {
        Optional<Place> stated = of(fault.getSourceLocation());
        if (stated.isPresent()) {
            return stated;
        }
        for (PolyglotException.StackFrame frame : fault.getPolyglotStackTrace()) {
            Optional<Place> place = frame.isGuestFrame() ? of(frame.getSourceLocation()) : Optional.empty();
            if (place.isPresent()) {
                return place;
            }
        }
        return Optional.empty();
    }

    private static Optional<Place> of(@Nullable SourceSection section) {
        if (section == null || !section.isAvailable() || !section.getSource().hasCharacters()) {
            return Optional.empty();
        }
        return "file".equals(section.getSource().getURI().getScheme())
                ? Optional.of(new Place(section.getSource(), section.getCharIndex(), section.getCharEndIndex()))
                : Optional.empty();
    }

    /**
     * {@code file:line:column: message}, the line and a caret under the column.
     *
     * @param file the name to show
     * @param word what the caret should point at if it stands in the stretch; else it points at the start
     */
    String show(String file, String word, String message) {
        CharSequence text = source.getCharacters();
        int offset = offsetOf(word);
        int lineStart = offset;
        while (lineStart > 0 && text.charAt(lineStart - 1) != '\n') {
            lineStart--;
        }
        int lineEnd = offset;
        while (lineEnd < text.length() && text.charAt(lineEnd) != '\n' && text.charAt(lineEnd) != '\r') {
            lineEnd++;
        }
        long line = text.subSequence(0, offset).chars().filter(c -> c == '\n').count() + 1;
        int column = offset - lineStart + 1;
        String head = file + ":" + line + ":" + column + ": " + message;
        String shown = text.subSequence(lineStart, lineEnd).toString();
        if (shown.length() > LONGEST_SHOWN) {
            return head;
        }
        // A tab stays a tab, so that the caret stands under its column at any tab width.
        String indent = shown.substring(0, column - 1).replaceAll("[^\t]", " ");
        return head + "\n  " + shown + "\n  " + indent + "^";
    }

    /** The last place where the word stands as a name of its own: calls in a chain are read from left to right. */
    private int offsetOf(String word) {
        String text = source.getCharacters().subSequence(start, end).toString();
        for (int at = word.isEmpty() ? -1 : text.lastIndexOf(word); at >= 0; at = text.lastIndexOf(word, at - 1)) {
            int after = at + word.length();
            boolean startsHere = at == 0 || !Character.isJavaIdentifierPart(text.charAt(at - 1));
            boolean endsHere = after == text.length() || !Character.isJavaIdentifierPart(text.charAt(after));
            if (startsHere && endsHere) {
                return start + at;
            }
        }
        return start;
    }
}
