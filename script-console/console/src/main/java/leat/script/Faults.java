package leat.script;

import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import leat.model.fault.LeatException;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.Source;

/** Turns whatever ends a script early into one message with a place. */
final class Faults {

    private final ScriptRequest request;
    private final ScriptFolder folder;
    private final Collection<String> globals;
    private final Views views;
    private final Map<Source, Source> asTyped;

    Faults(ScriptRequest request, ScriptFolder folder, Collection<String> globals, Views views) {
        this(request, folder, globals, views, Map.of());
    }

    /** {@code asTyped} gives for a source that is run in another form the form in which the user wrote it. */
    Faults(
            ScriptRequest request,
            ScriptFolder folder,
            Collection<String> globals,
            Views views,
            Map<Source, Source> asTyped) {
        this.request = request;
        this.folder = folder;
        this.globals = globals;
        this.views = views;
        this.asTyped = asTyped;
    }

    /** Ready to throw; a fault of our own code comes back as an IllegalStateException that says where it struck. */
    RuntimeException of(PolyglotException fault, Source script, Guard guard) {
        Optional<Place> place = Place.of(fault);
        if (guard.stopped()) {
            return failed(place, "", guard.why(), fault);
        }
        if (fault.isHostException()) {
            return ofHost(fault.asHostException(), place);
        }
        if (fault.isResourceExhausted()) {
            return failed(place, "", exhausted(said(fault)), fault);
        }
        if (fault.isInternalError()) {
            return defect(place, fault);
        }
        Rewording.Plain plain = new Rewording(globals, folder).of(fault, place, script);
        return failed(plain.place().or(() -> place), plain.word(), plain.message(), fault);
    }

    /** The script did not end when told to. */
    RuntimeException leftBehind(Guard guard) {
        return new ScriptFailedException(request.file() + ": " + guard.why());
    }

    RuntimeException outOfMemory(OutOfMemoryError error) {
        return failed(Optional.empty(), "", exhausted("memory"), error);
    }

    private static String exhausted(String message) {
        return message.contains("tack")
                ? "functions call each other without end, or too deep"
                : "the script needs more memory than there is";
    }

    private RuntimeException ofHost(Throwable cause, Optional<Place> place) {
        if (cause instanceof ScriptMistake mistake) {
            return failed(place, mistake.word(), said(mistake), mistake);
        }
        if (cause instanceof LeatException refused) {
            return failed(place, views.calling(), said(refused), refused);
        }
        if (cause instanceof StackOverflowError) {
            return failed(place, "", exhausted("stack"), cause);
        }
        if (cause instanceof OutOfMemoryError) {
            return failed(place, "", exhausted("memory"), cause);
        }
        return defect(place, cause);
    }

    private ScriptFailedException failed(Optional<Place> place, String word, String message, Throwable cause) {
        return new ScriptFailedException(shown(place, word, message), cause);
    }

    private IllegalStateException defect(Optional<Place> place, Throwable cause) {
        return new IllegalStateException(shown(place, "", "this is a defect of Leat: " + cause), cause);
    }

    private String shown(Optional<Place> place, String word, String message) {
        return place.map(this::asTyped)
                .map(known -> known.show(nameOf(known.source()), word, message))
                .orElse(request.file() + ": " + message);
    }

    private Place asTyped(Place place) {
        return new Place(asTyped.getOrDefault(place.source(), place.source()), place.start(), place.end());
    }

    /** The file as the user would name it: beside the script, by the way the script was named. */
    private String nameOf(Source source) {
        String path = source.getURI().getPath();
        if (path == null || !Path.of(path).startsWith(folder.root())) {
            return request.file().toString();
        }
        return request.file()
                .resolveSibling(folder.root().relativize(Path.of(path)).toString())
                .toString();
    }

    private static String said(Throwable fault) {
        return String.valueOf(fault.getMessage());
    }
}
