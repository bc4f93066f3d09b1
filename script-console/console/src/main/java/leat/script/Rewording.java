package leat.script;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Optional;
import java.util.SortedSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.Source;

/**
 * The language engine's own complaints in words for someone who has rarely programmed. Works on the texts of engine
 * 25.0.5; a text that is not known here is passed on without its "TypeError: ".
 */
final class Rewording {

    private static final Pattern KIND = Pattern.compile("^[A-Za-z]*Error: ");
    private static final Pattern UNDEFINED_NAME = Pattern.compile("^(\\S+) is not defined$");
    private static final Pattern NOTHING_THERE = Pattern.compile("^Cannot read property '(.*)' of (undefined|null)$");
    private static final Pattern NO_FUNCTION = Pattern.compile("^(.+) is not a function$", Pattern.DOTALL);
    private static final Pattern NOT_CALLABLE =
            Pattern.compile("^(execute|instantiate) on .* failed.*", Pattern.DOTALL);
    private static final Pattern READ_ONLY =
            Pattern.compile("^Cannot (?:assign to|redefine)(?: read only)? property:? '?(\\w+)'?.*", Pattern.DOTALL);
    private static final Pattern FROZEN = Pattern.compile("^Cannot (add|assign|delete).*Array.*", Pattern.DOTALL);
    private static final Pattern SYNTAX = Pattern.compile("^\\S+:\\d+:\\d+ ([^\\n]*).*", Pattern.DOTALL);
    private static final Pattern DECLARED = Pattern.compile("\\b(?:const|let|var|function|class)\\s+(\\w+)");
    private static final Pattern IMPORT = Pattern.compile("\\b(?:from|import)\\s*\\(?\\s*(['\"])(.*?)\\1");

    private final Collection<String> globals;
    private final ScriptFolder folder;

    Rewording(Collection<String> globals, ScriptFolder folder) {
        this.globals = globals;
        this.folder = folder;
    }

    /** A message, the word that the caret should point at, and a better place than the engine's, if one is known. */
    record Plain(String message, String word, Optional<Place> place) {

        Plain(String message, String word) {
            this(message, word, Optional.empty());
        }
    }

    Plain of(PolyglotException fault, Optional<Place> place, Source script) {
        String message = KIND.matcher(String.valueOf(fault.getMessage())).replaceFirst("");
        if (fault.isSyntaxError()) {
            Matcher syntax = SYNTAX.matcher(message);
            return new Plain(lowered(syntax.matches() ? syntax.group(1) : message), "");
        }
        Matcher name = UNDEFINED_NAME.matcher(message);
        if (name.matches()) {
            return undefinedName(name.group(1), place);
        }
        Matcher nothing = NOTHING_THERE.matcher(message);
        if (nothing.matches()) {
            return new Plain("what stands before ." + nothing.group(1) + " is " + nothing.group(2), nothing.group(1));
        }
        Optional<Plain> unread = place.isPresent() ? Optional.empty() : unreadModule(message, script);
        return unread.orElseGet(() -> ofCallsAndChanges(message));
    }

    private Plain ofCallsAndChanges(String message) {
        Matcher noFunction = NO_FUNCTION.matcher(message);
        if (noFunction.matches()) {
            return new Plain(
                    noFunction.group(1) + " is no function and cannot be called", lastName(noFunction.group(1)));
        }
        Matcher notCallable = NOT_CALLABLE.matcher(message);
        if (notCallable.matches()) {
            boolean withNew = notCallable.group(1).equals("instantiate");
            return new Plain(
                    withNew
                            ? "leave out the word new; Leat's things are made by calling a function"
                            : "a value is called like a function; leave out the parentheses behind it",
                    "");
        }
        Matcher readOnly = READ_ONLY.matcher(message);
        if (readOnly.matches() && globals.contains(readOnly.group(1))) {
            return new Plain(
                    readOnly.group(1) + " is a word of Leat and keeps its meaning; choose another name",
                    readOnly.group(1));
        }
        if (FROZEN.matcher(message).matches()) {
            return new Plain("this list cannot be changed; copy it first: [...list]", "");
        }
        if (message.startsWith("Maximum call stack size exceeded")) {
            return new Plain("functions call each other without end, or too deep", "");
        }
        return new Plain(message, "");
    }

    private Plain undefinedName(String name, Optional<Place> place) {
        SortedSet<String> names = Hint.likelierFirst(name, globals);
        place.ifPresent(known ->
                DECLARED.matcher(known.source().getCharacters()).results().forEach(found -> names.add(found.group(1))));
        names.remove(name);
        return new Plain("there is no " + name + " here" + Hint.nearest(name, names), name);
    }

    /** The engine gives no place for an import that fails, so the file that it names is looked up in the script. */
    private Optional<Plain> unreadModule(String message, Source script) {
        Matcher imports = IMPORT.matcher(script.getCharacters());
        while (imports.find()) {
            String written = imports.group(2);
            String bare = written.replaceFirst("^(file://|[./]+)", "");
            if (message.contains(bare)) {
                Place place = new Place(script, imports.start(2), imports.end(2));
                return Optional.of(new Plain(why(written), written, Optional.of(place)));
            }
        }
        return Optional.empty();
    }

    private String why(String written) {
        if (written.contains(":")) {
            return "only files in the script's folder can be imported";
        }
        try {
            folder.real(Path.of(written));
            return written + " cannot be imported";
        } catch (ScriptFolder.OutsideFolderException outside) {
            return written + " is outside the script's folder; only files inside it can be imported";
        } catch (IOException missing) {
            return "there is no file " + written + " in the script's folder" + folder.nearest(written);
        }
    }

    private static String lastName(String expression) {
        return expression.substring(expression.lastIndexOf('.') + 1);
    }

    private static String lowered(String message) {
        boolean word = message.length() > 1 && Character.isLowerCase(message.charAt(1));
        String text = word ? Character.toLowerCase(message.charAt(0)) + message.substring(1) : message;
        return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    }
}
