package leat.architecture.planted.locale.calc.coverage;

import java.util.Locale;

@SuppressWarnings("AnnotateFormatMethod")
final class Texts {

    static String badFormat(double radiusM) {
        return String.format("%.1f m", radiusM);
    }

    static String badFormatted(double radiusM) {
        return "%.1f m".formatted(radiusM);
    }

    static String goodFormat(double radiusM) {
        return String.format(Locale.ROOT, "%.1f m", radiusM);
    }
}
