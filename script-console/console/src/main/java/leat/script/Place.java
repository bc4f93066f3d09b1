package leat.script;

import java.util.Optional;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.Source;
import org.graalvm.polyglot.SourceSection;
import org.jspecify.annotations.Nullable;

/** A stretch of a script, from character {@code start} up to but not including {@code end}. */
record Place(Source source, int start, int end) {

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

    /** The message with this place; see {@link Spot#show}. */
    String show(String file, String word, String message) {
        return new Spot(source.getCharacters(), start, end).show(file, word, message);
    }
}
