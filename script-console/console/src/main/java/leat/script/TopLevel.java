package leat.script;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * A look at an entry of JavaScript from outside: where brackets, texts and comments begin and end, and which names it
 * declares at its top. {@code let} and {@code const} there become {@code var} of the same width, so that a name can
 * be declared anew by a later entry and every place in the text stays where it was.
 */
final class TopLevel {

    private final String text;
    private final StringBuilder rewritten;
    private final List<String> names = new ArrayList<>();
    private final Deque<Character> open = new ArrayDeque<>();
    private boolean isOpenAtEnd;
    private char before = ';'; // the last character that is neither space nor comment

    private TopLevel(String text) {
        this.text = text;
        this.rewritten = new StringBuilder(text);
        int at = 0;
        while (at < text.length()) {
            at = step(at);
        }
    }

    static TopLevel of(String text) {
        return new TopLevel(text);
    }

    /** The text with names that can be declared again. */
    String redeclarable() {
        return rewritten.toString();
    }

    /** The names that {@code let}, {@code const} and {@code var} declare, those taken out of lists and objects aside. */
    List<String> names() {
        return List.copyOf(names);
    }

    /** True if a template text or a comment is still open at the end. */
    boolean isOpenAtEnd() {
        return isOpenAtEnd;
    }

    private int step(int at) {
        char c = text.charAt(at);
        if (text.startsWith("//", at)) {
            int end = text.indexOf('\n', at);
            return end < 0 ? text.length() : end;
        }
        if (text.startsWith("/*", at)) {
            return after("*/", at + 2);
        }
        if (c == '"' || c == '\'') {
            before = c;
            return afterQuote(c, at + 1);
        }
        if (c == '`') {
            before = c;
            return afterTemplate(at + 1);
        }
        if (Character.isJavaIdentifierStart(c)) {
            return word(at);
        }
        if (c == '/' && "(,=:[!&|?{};<>+-*%~^".indexOf(before) >= 0) {
            before = c;
            return afterQuote('/', at + 1);
        }
        return bracket(c, at);
    }

    private int bracket(char c, int at) {
        if ("([{".indexOf(c) >= 0) {
            open.push(c);
        } else if (")]}".indexOf(c) >= 0 && !open.isEmpty()) {
            open.pop();
        }
        if (!Character.isWhitespace(c)) {
            before = c;
        }
        return at + 1;
    }

    private int word(int at) {
        int end = at;
        while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
            end++;
        }
        String word = text.substring(at, end);
        if (open.isEmpty() && before != '.' && (word.equals("let") || word.equals("const") || word.equals("var"))) {
            rewritten.replace(at, end, "var" + " ".repeat(word.length() - 3));
            nameAfter(end);
        }
        before = 'a';
        return end;
    }

    private void nameAfter(int at) {
        int start = at;
        while (start < text.length() && Character.isWhitespace(text.charAt(start))) {
            start++;
        }
        int end = start;
        while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
            end++;
        }
        if (end > start) {
            names.add(text.substring(start, end));
        }
    }

    private int after(String mark, int from) {
        int end = text.indexOf(mark, from);
        isOpenAtEnd |= end < 0;
        return end < 0 ? text.length() : end + mark.length();
    }

    /** A text of one line ends with its line, be it closed or not. */
    private int afterQuote(char quote, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) != quote && text.charAt(at) != '\n') {
            at += text.charAt(at) == '\\' ? 2 : 1;
        }
        return Math.min(at + 1, text.length());
    }

    private int afterTemplate(int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) != '`') {
            at += text.charAt(at) == '\\' ? 2 : 1;
        }
        isOpenAtEnd |= at >= text.length();
        return Math.min(at + 1, text.length());
    }
}
