package leat.script;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import jdk.jshell.Diag;
import jdk.jshell.EvalException;
import leat.model.fault.LeatException;

/**
 * The Java compiler's complaints in words for someone who has rarely programmed. Works on the texts of Java 17 to 25; a
 * text that is not known here is passed on, its first line only.
 */
final class JavaRewording {

    private static final Pattern UNKNOWN = Pattern.compile(
            "cannot find symbol\\s+symbol:\\s+(?:method|variable|class) (\\w+)(?:\\(.*\\))?(?:\\s+location:\\s+(?:(class|interface|@interface|enum|record|variable) ?(.*)))?",
            Pattern.DOTALL);
    private static final Pattern OF_TYPE = Pattern.compile("\\S+ of type (\\S+)");
    private static final Pattern MISMATCH = Pattern.compile(
            ".*?(?:incompatible types|argument mismatch)[:;] (\\S+) cannot be converted to ([^\\s)]+).*",
            Pattern.DOTALL);
    private static final Pattern WRONG_COUNT = Pattern.compile(
            "method (\\w+) in (?:class|interface|record|enum) (\\S+) cannot be applied.*differ in length.*",
            Pattern.DOTALL);
    private static final Pattern NO_OVERLOAD = Pattern.compile(
            "no suitable method found for (\\w+)\\((.*?)\\)\\s+method (\\S+)\\.\\w+\\(.*", Pattern.DOTALL);
    private static final Pattern UNRESOLVED = Pattern.compile("(?:method|variable|class) (\\w+).*");

    private final Surface surface;
    private final Wording wording;
    private final Supplier<Collection<String>> names;

    /** {@code names} gives all names that can be used where a name is not known. */
    JavaRewording(Surface surface, Wording wording, Supplier<Collection<String>> names) {
        this.surface = surface;
        this.wording = wording;
        this.names = names;
    }

    /** A message, the word that the caret should point at, and whether it should point at the start of the whole. */
    record Plain(String message, String word, boolean atStart) {

        Plain(String message, String word) {
            this(message, word, false);
        }
    }

    Plain of(Diag fault) {
        String text = String.valueOf(fault.getMessage(Locale.ROOT));
        Matcher unknown = UNKNOWN.matcher(text);
        if (unknown.matches()) {
            return unknown(
                    unknown.group(1), Optional.ofNullable(unknown.group(3)).orElse(""));
        }
        Matcher count = WRONG_COUNT.matcher(text);
        if (count.matches()) {
            return new Plain("write " + forms(count.group(2), count.group(1)), count.group(1));
        }
        Matcher overload = NO_OVERLOAD.matcher(text);
        if (overload.matches()) {
            String forms = forms(overload.group(3), overload.group(1));
            return new Plain("write " + forms + "; given: (" + types(overload.group(2)) + ")", overload.group(1));
        }
        Matcher mismatch = MISMATCH.matcher(text);
        if (mismatch.matches()) {
            return new Plain(
                    "this is " + ofType(mismatch.group(1), false) + "; it must be " + ofType(mismatch.group(2), true),
                    "",
                    true);
        }
        if (text.startsWith("reached end of file")) {
            return new Plain("the text ends here, and something is still open", "");
        }
        return new Plain(text.lines().findFirst().orElse(""), "");
    }

    /** A method or class was used that itself uses what is not there. */
    Plain ofUnresolved(List<String> missing) {
        Matcher first = UNRESOLVED.matcher(missing.isEmpty() ? "" : missing.get(0));
        return first.matches() ? unknown(first.group(1), "") : new Plain("something in it is not there", "");
    }

    private Plain unknown(String name, String location) {
        Matcher variable = OF_TYPE.matcher(location);
        String owner = variable.matches() ? variable.group(1) : location.strip();
        Optional<Class<?>> type = type(owner);
        if (type.isEmpty()) {
            String place = owner.isEmpty() ? "here" : "on " + owner.substring(owner.lastIndexOf('.') + 1);
            String hint = owner.isEmpty() ? Hint.nearest(name, Hint.likelierFirst(name, names.get())) : "";
            return new Plain("there is no " + name + " " + place + hint, name);
        }
        Collection<String> members = new TreeSet<>(surface.members(type.get()).keySet());
        if (!variable.matches()) { // of other expressions the compiler does not say whether they are a type or a value
            members.addAll(Surface.statics(type.get()).keySet());
        }
        String kind = Wording.withArticle(Wording.words(type.get().getSimpleName()));
        return new Plain("there is no " + name + " on " + kind + Hint.nearestOrAll(name, members), name);
    }

    /** How that method of that type is written; its name alone for a type that is not of Leat. */
    private String forms(String typeName, String method) {
        Optional<Class<?>> type = type(typeName);
        SortedMap<String, Operation> members = type.map(surface::members).orElseGet(java.util.TreeMap::new);
        Operation operation = members.get(method);
        if (operation == null && type.isPresent()) {
            operation = Surface.statics(type.get()).get(method);
        }
        if (operation == null) {
            operation = Surface.own(SessionFunctions.class).get(method);
        }
        return operation == null ? method + "(…)" : String.join(" or ", operation.forms());
    }

    private String types(String list) {
        return list.isEmpty()
                ? ""
                : Arrays.stream(list.split(","))
                        .map(each -> ofType(each, false))
                        .collect(Collectors.joining(", "));
    }

    private String ofType(String name, boolean wanted) {
        Optional<Class<?>> type = switch (name) {
            case "int", "long" -> Optional.of(int.class);
            case "double", "float" -> Optional.of(double.class);
            case "boolean" -> Optional.of(boolean.class);
            default -> type(name);
        };
        if (name.equals("<nulltype>")) {
            return "null";
        }
        if (type.isEmpty()) {
            return name.substring(name.lastIndexOf('.') + 1);
        }
        String words = wording.ofType(type.get());
        return wanted ? words : words.replaceFirst("( or its name as text)?, such as .*", "");
    }

    private static Optional<Class<?>> type(String name) {
        try {
            return name.isEmpty() || !name.contains(".")
                    ? Optional.empty()
                    : Optional.of(Class.forName(name, false, JavaRewording.class.getClassLoader()));
        } catch (ClassNotFoundException ofTheScript) {
            return Optional.empty();
        }
    }

    /**
     * What a script's exception means.
     *
     * @param shown puts a message together with its place
     */
    RuntimeException thrown(EvalException fault, UnaryOperator<String> shown) {
        String className = fault.getExceptionClassName();
        String message = String.valueOf(fault.getMessage());
        if (type(className).filter(LeatException.class::isAssignableFrom).isPresent()) {
            return JavaText.failed(shown.apply(message), fault);
        }
        if (className.equals("java.lang.StackOverflowError")) {
            return JavaText.failed(shown.apply("functions call each other without end, or too deep"), fault);
        }
        if (className.equals("java.lang.OutOfMemoryError")) {
            return JavaText.failed(shown.apply("the script needs more memory than there is"), fault);
        }
        String kind = className.substring(className.lastIndexOf('.') + 1);
        String told = fault.getMessage() == null ? kind : kind + ": " + message;
        return isOurs(fault)
                ? new IllegalStateException(shown.apply("this is a defect of Leat: " + told), fault)
                : JavaText.failed(shown.apply(told), fault);
    }

    /** Thrown by our own code, and not because it was given null, which only Java can do. */
    private static boolean isOurs(EvalException fault) {
        List<StackTraceElement> frames = new ArrayList<>(Arrays.asList(fault.getStackTrace()));
        return !fault.getExceptionClassName().equals("java.lang.NullPointerException")
                && !frames.isEmpty()
                && frames.get(0).getClassName().startsWith("leat.");
    }
}
