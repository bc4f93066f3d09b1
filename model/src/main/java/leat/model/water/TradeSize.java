package leat.model.water;

import leat.model.fault.Require;

/**
 * What a pipe is ordered by: a key of the catalogue, not a length.
 *
 * @param series such as {@code PVC Schedule 40}
 * @param size   such as {@code 3/4 in}
 */
public record TradeSize(String series, String size) {

    public TradeSize {
        Require.name("trade size", "series", series);
        Require.name("trade size", "size", size);
    }

    @Override
    public String toString() {
        return size + " " + series;
    }
}
