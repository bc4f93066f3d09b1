package leat.console;

import java.util.regex.Pattern;
import leat.model.finding.Severity;

/** Colours the words of a result that a person should see first. */
final class Paint {

    private static final Pattern BREACH = startsLine(Severity.BREACH);
    private static final Pattern CAUTION = startsLine(Severity.CAUTION);

    private Paint() {}

    private static Pattern startsLine(Severity severity) {
        return Pattern.compile("(?m)^( *)" + severity.label() + "\\b");
    }

    /** The severities that lines of findings begin with. */
    static String severities(String text, Outlet outlet) {
        String red = BREACH.matcher(text).replaceAll("$1" + outlet.red(Severity.BREACH.label()));
        return CAUTION.matcher(red).replaceAll("$1" + outlet.yellow(Severity.CAUTION.label()));
    }
}
