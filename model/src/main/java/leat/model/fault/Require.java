package leat.model.fault;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The checks that compact constructors share. Each throws {@link InvalidValueException} and names the thing. */
public final class Require {

    private Require() {}

    /** Refuses null, which only a reader of files or a caller from outside can bring. */
    public static void present(String thing, String field, @Nullable Object value) {
        if (value == null) {
            throw new InvalidValueException(thing, field, "missing", "given");
        }
    }

    public static void finite(String thing, String field, double value) {
        if (!Double.isFinite(value)) {
            throw new InvalidValueException(thing, field, String.valueOf(value), "a finite number");
        }
    }

    public static <T extends Comparable<? super T>> void moreThan(String thing, String field, T value, T bound) {
        present(thing, field, value);
        if (value.compareTo(bound) <= 0) {
            throw new InvalidValueException(thing, field, value.toString(), "more than " + bound);
        }
    }

    public static <T extends Comparable<? super T>> void atLeast(String thing, String field, T value, T bound) {
        present(thing, field, value);
        if (value.compareTo(bound) < 0) {
            throw new InvalidValueException(thing, field, value.toString(), "at least " + bound);
        }
    }

    /** The {@link #name(String, String, String)} of the thing itself. */
    public static void name(String thing, String value) {
        name(thing, "name", value);
    }

    /** Text that a person can read back: not blank, nothing unprintable, at most 80 characters, no space at its ends. */
    public static void name(String thing, String field, String value) {
        printable(thing, field, value, 80);
    }

    /** As a name, but up to 400 characters long. */
    public static void sentence(String thing, String field, String value) {
        printable(thing, field, value, 400);
    }

    private static void printable(String thing, String field, String value, int most) {
        present(thing, field, value);
        boolean unprintable = value.codePoints().anyMatch(Require::isUnprintable);
        if (value.isBlank()
                || unprintable
                || value.length() > most
                || !value.strip().equals(value)) {
            throw new InvalidValueException(
                    thing,
                    field,
                    "'" + value.replaceAll("[\\p{Cc}\\p{Cs}\\p{Zl}\\p{Zp}]", "?") + "'",
                    "1 to " + most + " printable characters without a space at either end");
        }
    }

    /** A lone surrogate cannot be written to a file and read back; line ends would break the line of a message. */
    private static boolean isUnprintable(int codePoint) {
        int type = Character.getType(codePoint);
        return type == Character.CONTROL
                || type == Character.SURROGATE
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR;
    }

    /** An immutable copy; a missing list or a missing entry is refused. */
    public static <T> List<T> entries(String thing, String field, Collection<? extends @Nullable T> values) {
        present(thing, field, values);
        List<T> kept = new ArrayList<>();
        for (T value : values) {
            present(thing, field + "[" + kept.size() + "]", value);
            kept.add(value);
        }
        return List.copyOf(kept);
    }

    /** The things sorted by id, as an immutable list; two with the same id are refused. */
    public static <T, K extends Comparable<? super K>> List<T> unique(
            String thing, Collection<? extends T> things, Function<? super T, ? extends K> id) {
        List<T> sorted = new ArrayList<>(entries(thing, "list", things));
        sorted.sort(Comparator.comparing(id));
        for (int i = 1; i < sorted.size(); i++) {
            K key = id.apply(sorted.get(i));
            if (Objects.equals(key, id.apply(sorted.get(i - 1)))) {
                throw new InvalidValueException(thing + " " + key, "id", "used twice", "unique among its kind");
            }
        }
        return List.copyOf(sorted);
    }
}
