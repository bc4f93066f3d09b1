package leat.docs;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** As much of a page in Markdown as a check of links needs: no code, where links lead, what can be linked to. */
final class Markdown {

    private static final Pattern FENCED = Pattern.compile("(?ms)^ {0,3}(```+|~~~+).*?^ {0,3}\\1[`~]*\\s*?$");
    private static final Pattern INLINE_CODE = Pattern.compile("(`+)(?!`).*?(?<!`)\\1(?!`)");
    private static final Pattern COMMENT = Pattern.compile("(?s)<!--.*?-->");
    private static final Pattern INLINE_LINK = Pattern.compile("\\]\\(\\s*<?([^)\\s>]*)>?(?:\\s+\"[^\"]*\")?\\s*\\)");
    private static final Pattern NAMED_LINK = Pattern.compile("(?m)^ {0,3}\\[[^\\]^]+\\]:\\s*<?([^\\s>]+)>?");
    private static final Pattern HTML_LINK = Pattern.compile("\\b(?:href|src)\\s*=\\s*\"([^\"]*)\"");
    private static final Pattern HTML_ANCHOR = Pattern.compile("\\b(?:id|name)\\s*=\\s*\"([^\"]*)\"");
    private static final Pattern HEADING = Pattern.compile("(?m)^ {0,3}#{1,6}\\s+(.*?)\\s*#*\\s*$");
    private static final Pattern LINK_AROUND = Pattern.compile("!?\\[([^\\]]*)\\]\\([^)]*\\)");

    private final String withoutBlocks;
    private final String withoutCode;

    Markdown(String text) {
        withoutBlocks = COMMENT.matcher(FENCED.matcher(text).replaceAll("")).replaceAll("");
        withoutCode = INLINE_CODE.matcher(withoutBlocks).replaceAll("");
    }

    /** Where links and images lead, as written. */
    List<String> targets() {
        return Stream.of(INLINE_LINK, NAMED_LINK, HTML_LINK)
                .flatMap(kind -> kind.matcher(withoutCode).results())
                .map(match -> match.group(1))
                .toList();
    }

    /** What may follow {@code #}: headings in the spelling that code hosts give them, and marks in HTML. */
    Set<String> anchors() {
        Set<String> anchors = new HashSet<>();
        HTML_ANCHOR.matcher(withoutCode).results().map(match -> match.group(1)).forEach(anchors::add);
        HEADING.matcher(withoutBlocks).results().map(Markdown::spelling).forEach(name -> {
            String unused = name;
            for (int again = 1; !anchors.add(unused); again++) {
                unused = name + "-" + again;
            }
        });
        return anchors;
    }

    private static String spelling(MatchResult heading) {
        String text = LINK_AROUND.matcher(heading.group(1)).replaceAll("$1").toLowerCase(Locale.ROOT);
        return text.replaceAll("[^\\p{L}\\p{N}\\p{M} _-]", "").replace(' ', '-');
    }
}
