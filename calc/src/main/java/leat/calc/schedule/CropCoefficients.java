package leat.calc.schedule;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import leat.model.catalog.PlantKind;
import leat.model.catalog.WateringTables;
import leat.model.quantity.Ratio;
import leat.model.water.Climate;
import leat.model.water.GrowingPlace;

/**
 * How much more or less than the grass reference a planting uses, by month. Plants grow in months with a mean of 5 °C and
 * more (common practice). In the first of these they come half way from the initial to the middle coefficient, in the last
 * half way to the end: the development and late stages of FAO 56, chapter 6, a month each.
 */
final class CropCoefficients {

    private static final double GROWING_C = 5;

    private CropCoefficients() {}

    static boolean grows(Climate climate, Month month) {
        return climate.month(month).meanC() >= GROWING_C;
    }

    static Ratio of(PlantKind kind, GrowingPlace place, WateringTables tables, Climate climate, Month month) {
        double factor = tables.density(place.density()).value().value()
                * tables.microclimate(place.microclimate()).value().value();
        return Ratio.of(ofKind(kind, climate, month).value() * factor);
    }

    /** Without regard to where it grows. */
    static Ratio ofKind(PlantKind kind, Climate climate, Month month) {
        if (!kind.monthly().isEmpty()) {
            int shift = climate.isSouthern() ? 6 : 0;
            return kind.monthly().get((month.getValue() - 1 + shift) % 12);
        }
        Ratio middle = kind.middle();
        Ratio initial = kind.initial().orElse(middle);
        if (growsAlways(climate)) {
            return middle;
        }
        if (!grows(climate, month)) {
            return initial;
        }
        boolean begins = !grows(climate, month.minus(1));
        boolean ends = !grows(climate, month.plus(1));
        Ratio beside = begins ? initial : ends ? kind.end().orElse(middle) : middle;
        return Ratio.of((middle.value() + beside.value()) / 2);
    }

    private static boolean growsAlways(Climate climate) {
        List<Month> all = Arrays.asList(Month.values());
        return all.stream().allMatch(month -> grows(climate, month));
    }
}
