package leat.model.catalog;

import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;

/**
 * How the depth of water falls off along the radius.
 *
 * @param relativeDepth at evenly spaced shares of the radius from 0 to 1, at least 2 values, none negative; the mean
 *     over the wetted circle is 1
 */
public record Profile(String key, List<Double> relativeDepth) {

    public Profile {
        Require.name("profile", "key", key);
        relativeDepth = Require.entries("profile " + key, "relativeDepth", relativeDepth);
        if (relativeDepth.size() < 2) {
            throw new InvalidValueException(
                    "profile " + key, "relativeDepth", relativeDepth.size() + " values", "at least 2");
        }
        for (double depth : relativeDepth) {
            if (!(depth >= 0 && depth < Double.POSITIVE_INFINITY)) {
                throw new InvalidValueException("profile " + key, "relativeDepth", String.valueOf(depth), "at least 0");
            }
        }
    }
}
