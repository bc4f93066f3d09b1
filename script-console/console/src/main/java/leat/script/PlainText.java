package leat.script;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import leat.model.finding.Finding;
import leat.model.finding.Ledger;
import leat.model.finding.Severity;
import leat.model.finding.Step;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.plan.Yard;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Quantity;
import leat.model.quantity.Ratio;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;

/** Values as a person reads them: figures rounded and in the yard's units, findings and ledgers as lines. */
public final class PlainText {

    private PlainText() {}

    /** The value in words and figures; a list or a map gives a line for each entry. */
    public static String text(Object host, UnitSystem units) {
        if (host instanceof Quantity quantity) {
            return Units.show(quantity, units);
        }
        if (host instanceof Finding finding) {
            return finding(finding, units);
        }
        if (host instanceof Ledger ledger) {
            return ledger.steps().stream().map(step -> step(step, units)).collect(Collectors.joining("\n"));
        }
        if (host instanceof Yard yard) {
            return yard(yard);
        }
        if (host instanceof Id id) {
            return id.name();
        }
        if (host instanceof Collection<?> collection) {
            return collection.stream().map(each -> text(each, units)).collect(Collectors.joining("\n"));
        }
        if (host instanceof Map<?, ?> map) {
            return map.entrySet().stream()
                    .map(entry -> key(entry.getKey()) + ": " + text(entry.getValue(), units))
                    .collect(Collectors.joining("\n"));
        }
        return RecordText.isPlainRecord(host) ? new RecordText(units).inline(host) : ownText(host);
    }

    /** What the value says of itself; its kind if it says nothing, never a class name with a number of no meaning. */
    private static String ownText(Object host) {
        try {
            boolean saysNothing = host.getClass().getMethod("toString").getDeclaringClass() == Object.class;
            return saysNothing
                    ? Wording.withArticle(Wording.words(host.getClass().getSimpleName()))
                    : host.toString();
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** How a key of a map is written in a script: a constant or an id by its name. */
    static String key(Object key) {
        if (key instanceof Enum<?> constant) {
            return constant.name();
        }
        return Types.isName(key.getClass()) ? Types.nameIn(key) : key.toString();
    }

    /** {@code breach: head R7: velocity in pipes: 6.2 ft/s, limit at most 5.0 ft/s (source); advice}. */
    public static String finding(Finding finding, UnitSystem units) {
        String advice = finding.advice().isEmpty() ? "" : "; " + finding.advice();
        return finding.severity().label() + ": " + subject(finding.subject(), units) + ": "
                + finding.rule().title() + ": "
                + (isOpenQuestion(finding) ? "not yet" : againstLimit(finding, units)) + advice;
    }

    /** Of a place on a thing its coordinates too, in the yard's units. */
    static String subject(Subject subject, UnitSystem units) {
        Optional<Point> at = subject instanceof Subject.Thing thing ? thing.at() : Optional.empty();
        return subject
                + at.map(one -> " at " + Units.show(one.east(), units) + ", " + Units.show(one.north(), units))
                        .orElse("");
    }

    private static String againstLimit(Finding finding, UnitSystem units) {
        return measured(finding, units) + ", limit " + finding.rule().side().label() + " "
                + Units.show(finding.limit(), units);
    }

    /** Something that is still to be done or to be told: a count of one says less than words. */
    private static boolean isOpenQuestion(Finding finding) {
        return finding.severity() == Severity.NOTE
                && finding.limit().equals(Count.ZERO)
                && finding.measured().equals(Count.of(1));
    }

    /** For the figures of a ledger, which may be small: bores in inches or millimetres, pure numbers as such. */
    static String fine(Quantity quantity, UnitSystem units) {
        if (quantity instanceof Ratio ratio) {
            return shortest(ratio.value());
        }
        if (quantity instanceof Length length && Math.abs(length.inFeet()) < 1) {
            return units == UnitSystem.US
                    ? String.format(Locale.ROOT, "%.3f in", length.inInches())
                    : String.format(Locale.ROOT, "%.1f mm", length.inMillimetres());
        }
        return Units.show(quantity, units);
    }

    private static String shortest(double value) {
        return new BigDecimal(value)
                .round(new MathContext(5))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** The measured figure; with more digits where rounding would make it the very limit that it misses. */
    static String measured(Finding finding, UnitSystem units) {
        String shown = Units.show(finding.measured(), units);
        boolean hidden = shown.equals(Units.show(finding.limit(), units))
                && finding.measured().si() != finding.limit().si();
        return hidden ? Units.rounded(finding.measured(), units) : shown;
    }

    private static String step(Step step, UnitSystem units) {
        String inputs = step.inputs().stream()
                .map(input -> input.name() + " = " + fine(input.value(), units))
                .collect(Collectors.joining(", "));
        return step.text() + ": " + fine(step.value(), units) + "   " + step.formula()
                + (inputs.isEmpty() ? "" : " with " + inputs) + "   [" + step.citation() + "]";
    }

    private static String yard(Yard yard) {
        return yard.name() + ": " + counted(yard.water().zones().size(), "zone") + ", "
                + counted(yard.water().heads().size(), "head") + ", "
                + counted(yard.water().bibs().size(), "hose bib");
    }

    /** {@code 1 zone}, {@code 2 zones}, {@code 2 breaches}. */
    public static String counted(int count, String noun) {
        if (count == 1) {
            return count + " " + noun;
        }
        boolean ies = noun.endsWith("ry") || noun.endsWith("ty");
        String plural = ies ? noun.substring(0, noun.length() - 1) + "ies" : noun + (noun.endsWith("ch") ? "es" : "s");
        return count + " " + plural;
    }
}
