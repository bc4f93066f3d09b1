package leat.script;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the comments in a type's source say of it and of its methods. The sources of all types that scripts see lie
 * beside the classes, so that a method added there is explained here without further ado. Relies on our layout:
 * members are indented by four spaces, and a line comment at that depth is the heading of those that follow.
 */
final class SourceNotes {

    private static final Pattern HEADING = Pattern.compile("    // ([A-Z].*)");
    private static final Pattern MEMBER = Pattern.compile("    (?:[\\w.<>?,\\[\\]@ ]+ )?(\\w+)\\((.*)");
    private static final Pattern PARAMETER = Pattern.compile("(?s)@param\\s+(\\w+)\\s+(.*?)(?=\\n\\s*@|$)");
    private static final Pattern CALL = Pattern.compile("\\{@code (\\w+\\(.*?\\))}");

    private final Map<String, String> commentBySignature = new TreeMap<>();
    private final Map<String, String> headingByName = new LinkedHashMap<>();
    private String ofType = "";

    private SourceNotes() {}

    /** The notes of a top-level type; of one without a source there are none. */
    static SourceNotes of(Class<?> type) {
        SourceNotes notes = new SourceNotes();
        String place = "/META-INF/source/" + type.getName().replace('.', '/') + ".java";
        try (InputStream source = type.getResourceAsStream(place)) {
            if (source != null) {
                notes.read(new String(source.readAllBytes(), StandardCharsets.UTF_8)
                        .lines()
                        .toList());
            }
        } catch (IOException failure) {
            throw new UncheckedIOException("cannot read " + place, failure);
        }
        return notes;
    }

    private void read(List<String> lines) {
        String comment = "";
        String heading = "";
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            Matcher headed = HEADING.matcher(line);
            Matcher member = MEMBER.matcher(line);
            if (line.strip().startsWith("/**")) {
                int end = i;
                while (!lines.get(end).contains("*/")) {
                    end++;
                }
                comment = String.join("\n", lines.subList(i, end + 1));
                i = end;
            } else if (headed.matches()) {
                heading = headed.group(1);
                comment = "";
            } else if (member.matches() && !line.contains(" = ")) {
                int end = i;
                while (!lines.get(end).contains(")")) {
                    end++;
                }
                String rest = String.join(" ", lines.subList(i, end + 1));
                commentBySignature.put(signature(member.group(1), rest.substring(rest.indexOf('(') + 1)), comment);
                headingByName.putIfAbsent(member.group(1), heading);
                comment = "";
            } else if (!line.isEmpty() && !line.startsWith(" ") && !comment.isEmpty() && !line.startsWith("@")) {
                ofType = comment;
                comment = "";
            } else if (!line.strip().startsWith("@")) {
                comment = "";
            }
        }
    }

    /** {@code plan(Yard,PlannerParameters)}, from the text that follows the opening bracket. */
    private static String signature(String name, String rest) {
        String text = rest.substring(0, Math.max(0, rest.indexOf(')'))).replaceAll("<[^()]*>", "");
        List<String> types = new ArrayList<>();
        for (String parameter : text.split(",")) {
            String[] words = parameter.strip().split("\\s+");
            if (words.length >= 2) {
                types.add(words[words.length - 2].replace("...", "[]"));
            }
        }
        return name + "(" + String.join(",", types) + ")";
    }

    /** What is said of a method in its first sentence; empty if nothing is. */
    String of(Method method) {
        String comment = comment(method);
        String parameter = comment.isEmpty() && method.getParameterCount() == 0 ? ofComponent(method.getName()) : "";
        return comment.isEmpty() ? parameter : firstSentence(comment);
    }

    private String comment(Method method) {
        String types = String.join(
                ",",
                Arrays.stream(method.getGenericParameterTypes())
                        .map(type -> simple(type.getTypeName()))
                        .toList());
        return commentBySignature.getOrDefault(method.getName() + "(" + types + ")", "");
    }

    private static String simple(String typeName) {
        String plain = typeName.replaceAll("<.*>", "");
        return plain.substring(Math.max(plain.lastIndexOf('.'), plain.lastIndexOf('$')) + 1);
    }

    /** The comment on a record tells what each of its components is. */
    private String ofComponent(String name) {
        Matcher parameter = PARAMETER.matcher(bare(ofType));
        while (parameter.find()) {
            if (parameter.group(1).equals(name)) {
                return plain(parameter.group(2));
            }
        }
        return "";
    }

    /** The first sentence on the type itself. */
    String ofType() {
        return firstSentence(ofType);
    }

    /** The heading that a member stands under; empty if there is none. */
    String heading(String member) {
        return headingByName.getOrDefault(member, "");
    }

    /** Where a member stands in the source, counted from 0; after all others if it is not there. */
    int rank(String member) {
        int rank = List.copyOf(headingByName.keySet()).indexOf(member);
        return rank < 0 ? Integer.MAX_VALUE : rank;
    }

    /** A call of the method itself that its comment gives as an example; empty for none. */
    String example(Method method) {
        Matcher call = CALL.matcher(comment(method));
        while (call.find()) {
            if (call.group(1).startsWith(method.getName() + "(")) {
                return call.group(1);
            }
        }
        return "";
    }

    private static String firstSentence(String comment) {
        String text = bare(comment);
        int tag = text.indexOf("\n@");
        int paragraph = text.indexOf("<p>");
        String first =
                text.substring(0, Math.min(tag < 0 ? text.length() : tag, paragraph < 0 ? text.length() : paragraph));
        String whole = plain(first.replaceAll("(?s)<pre>.*", ""));
        Matcher end = Pattern.compile("[.!?](?= [A-Z]|$)").matcher(whole);
        return end.find() ? whole.substring(0, end.end()) : whole;
    }

    /** The comment without its stars. */
    private static String bare(String comment) {
        return comment.replaceAll("^\\s*/\\*\\*\\s*", "")
                .replaceAll("\\s*\\*/\\s*$", "")
                .replaceAll("(?m)^\\s*\\* ?", "");
    }

    private static String plain(String text) {
        return text.replaceAll("\\{@(?:code|literal) ([^}]*)}", "$1")
                .replaceAll("\\{@link (?:[\\w.]*#)?([\\w.]+)[^}]*}", "$1")
                .replace("&lt;", "<")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
