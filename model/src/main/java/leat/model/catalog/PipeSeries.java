package leat.model.catalog;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;

/**
 * The sizes of one pipe series.
 *
 * @param sizes from the smallest to the largest bore, at least one
 */
public record PipeSeries(String name, List<PipeSpec> sizes) {

    public PipeSeries {
        Require.name("pipe series", name);
        List<PipeSpec> sorted = new ArrayList<>(Require.entries("pipe series " + name, "sizes", sizes));
        sorted.sort(Comparator.comparing(PipeSpec::bore));
        sizes = List.copyOf(sorted);
        if (sizes.isEmpty()) {
            throw new InvalidValueException("pipe series " + name, "sizes", "none", "at least one");
        }
    }

    /** Place of the size from the smallest, 0, up; trade sizes are compared by it. */
    public int rank(String size) {
        for (int i = 0; i < sizes.size(); i++) {
            if (sizes.get(i).size().size().equals(size)) {
                return i;
            }
        }
        throw new InvalidValueException(
                "pipe series " + name,
                "size",
                "'" + size + "'",
                "one of "
                        + String.join(
                                ", ",
                                sizes.stream().map(one -> one.size().size()).toList()));
    }

    public PipeSpec spec(String size) {
        return sizes.get(rank(size));
    }
}
