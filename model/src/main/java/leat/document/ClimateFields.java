package leat.document;

import java.time.Month;
import java.util.Map;
import leat.model.quantity.Angle;
import leat.model.quantity.Dimension;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Velocity;
import leat.model.water.Climate;
import leat.model.water.ClimateMonth;
import leat.model.water.Sunshine;

/** A climate of the user's own. Temperatures are numbers in °C, for they are no quantity that anything is laid out by. */
final class ClimateFields {

    private final Places places;

    ClimateFields(Places places) {
        this.places = places;
    }

    static Map<String, Object> written(Climate climate, UnitSystem units) {
        return new FieldWriter(units)
                .text("place", climate.place())
                .quantity("latitude", climate.latitude())
                .quantity("altitude", climate.altitude())
                .list("months", Lists.map(climate.months(), month -> month(month, units)))
                .fields();
    }

    private static Map<String, Object> month(ClimateMonth month, UnitSystem units) {
        FieldWriter out = new FieldWriter(units)
                .word("month", month.month())
                .number("lowC", month.lowC())
                .number("highC", month.highC());
        month.dewC().ifPresent(dew -> out.number("dewC", dew));
        month.humidity().ifPresent(share -> out.quantity("humidity", share));
        month.wind().ifPresent(wind -> out.quantity("wind", wind));
        Sunshine sunshine = month.sunshine();
        sunshine.hours().ifPresent(hours -> out.number("sunshineH", hours));
        sunshine.share().ifPresent(share -> out.quantity("sunshineShare", share));
        sunshine.solarMj().ifPresent(solar -> out.number("solarMj", solar));
        month.rain().ifPresent(rain -> out.quantity("rain", rain));
        return out.fields();
    }

    Climate read(Json json) {
        FieldReader in = FieldReader.of(json, "climate", places, "place", "latitude", "altitude", "months");
        return in.made(() -> new Climate(
                in.text("place"),
                in.quantity("latitude", Dimension.ANGLE, Angle.class),
                in.length("altitude"),
                in.list("months", this::month)));
    }

    private ClimateMonth month(Json json) {
        FieldReader in = FieldReader.of(
                json,
                "climate month",
                places,
                "month",
                "lowC",
                "highC",
                "dewC",
                "humidity",
                "wind",
                "sunshineH",
                "sunshineShare",
                "solarMj",
                "rain");
        return in.made(() -> new ClimateMonth(
                in.word("month", Month.class),
                in.number("lowC"),
                in.number("highC"),
                in.optionalNumber("dewC"),
                in.optionalQuantity("humidity", Dimension.RATIO, Ratio.class),
                in.optionalQuantity("wind", Dimension.VELOCITY, Velocity.class),
                new Sunshine(
                        in.optionalNumber("sunshineH"),
                        in.optionalQuantity("sunshineShare", Dimension.RATIO, Ratio.class),
                        in.optionalNumber("solarMj")),
                in.optionalQuantity("rain", Dimension.LENGTH, Length.class)));
    }
}
