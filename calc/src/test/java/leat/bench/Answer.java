package leat.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What an entrant found: figures and series that two entrants must share, each with the difference that is allowed, and
 * requirements that an answer must meet by itself. Built once, in the order in which it is printed.
 */
public final class Answer {

    private record Part(String name, double[] values, double relative, double absolute) {}

    private final List<Part> parts = new ArrayList<>();
    private final List<String> unmet = new ArrayList<>();

    /** A figure to print and to compare; the larger of the two allowances counts. */
    public Answer figure(String name, double value, double relative, double absolute) {
        return series(name, new double[] {value}, relative, absolute);
    }

    /** Figures to compare one by one; they are not printed if there is more than one. */
    public Answer series(String name, double[] values, double relative, double absolute) {
        parts.add(new Part(name, values.clone(), relative, absolute));
        return this;
    }

    /** Something that makes the answer worthless if it does not hold. */
    public Answer require(String what, boolean holds) {
        if (!holds) {
            unmet.add(what);
        }
        return this;
    }

    /** The first reason not to count this answer beside {@code ours}; empty if they agree. */
    public Optional<String> disagreementWith(Answer ours) {
        if (!unmet.isEmpty()) {
            return Optional.of("not met: " + unmet.get(0));
        }
        for (Part expected : ours.parts) {
            Optional<String> difference = difference(expected);
            if (difference.isPresent()) {
                return difference;
            }
        }
        return Optional.empty();
    }

    private Optional<String> difference(Part expected) {
        for (Part part : parts) {
            if (part.name.equals(expected.name)) {
                return difference(part, expected);
            }
        }
        return Optional.of("gives no " + expected.name);
    }

    private static Optional<String> difference(Part part, Part expected) {
        if (part.values.length != expected.values.length) {
            return Optional.of(part.name + " has " + part.values.length + " values, not " + expected.values.length);
        }
        for (int i = 0; i < part.values.length; i++) {
            double allowed = Math.max(expected.absolute, expected.relative * Math.abs(expected.values[i]));
            if (!(Math.abs(part.values[i] - expected.values[i]) <= allowed)) {
                return Optional.of(part.name + "[" + i + "] is " + part.values[i] + ", ours is " + expected.values[i]);
            }
        }
        return Optional.empty();
    }

    /** The single figures, for people. */
    @Override
    public String toString() {
        var text = new StringBuilder();
        for (Part part : parts) {
            if (part.values.length == 1) {
                text.append(text.isEmpty() ? "" : ", ")
                        .append(part.name)
                        .append(' ')
                        .append(part.values[0]);
            }
        }
        return text.toString();
    }
}
