package leat.script;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Names and calls joined by dots, read backwards from where somebody types: {@code yard("x").water().heads} before the
 * next dot. Brackets of a call are passed over, whatever stands in them.
 *
 * @param links from left to right
 */
record Chain(List<Link> links) {

    /** @param called true if brackets follow the name */
    record Link(String name, boolean called) {}

    Chain {
        links = List.copyOf(links);
    }

    /** The chain that ends right before {@code end}; nothing if something else stands there. */
    static Optional<Chain> before(String text, int end) {
        List<Link> links = new ArrayList<>();
        int at = end;
        do {
            at = skipSpace(text, at);
            boolean called = at > 0 && text.charAt(at - 1) == ')';
            if (called) {
                at = skipSpace(text, openingOf(text, at - 1));
            }
            int start = startOfName(text, at);
            if (start == at) {
                return Optional.empty();
            }
            links.add(new Link(text.substring(start, at), called));
            at = skipSpace(text, start) - 1;
        } while (at >= 0 && text.charAt(at) == '.');
        Collections.reverse(links);
        return Optional.of(new Chain(links));
    }

    private static int skipSpace(String text, int end) {
        int at = end;
        while (at > 0 && Character.isWhitespace(text.charAt(at - 1))) {
            at--;
        }
        return at;
    }

    /** Where the name that ends right before {@code end} starts; {@code end} itself if there is no name. */
    static int startOfName(String text, int end) {
        int at = end;
        while (at > 0 && Character.isJavaIdentifierPart(text.charAt(at - 1))) {
            at--;
        }
        return at < end && Character.isJavaIdentifierStart(text.charAt(at)) ? at : end;
    }

    /** The place of the bracket that the one at {@code closing} closes; 0 if there is none. */
    private static int openingOf(String text, int closing) {
        int depth = 0;
        for (int at = closing; at >= 0; at--) {
            char c = text.charAt(at);
            if (c == '"' || c == '\'' || c == '`') {
                at = Math.max(0, text.lastIndexOf(c, at - 1));
            } else if (")]}".indexOf(c) >= 0) {
                depth++;
            } else if ("([{".indexOf(c) >= 0 && --depth == 0) {
                return at;
            }
        }
        return 0;
    }
}
