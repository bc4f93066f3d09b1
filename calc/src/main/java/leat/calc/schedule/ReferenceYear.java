package leat.calc.schedule;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.calc.schedule.internal.ReferenceEvapotranspiration;
import leat.calc.schedule.internal.Sunlight;
import leat.calc.schedule.internal.Vapour;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.water.Climate;
import leat.model.water.ClimateMonth;
import leat.model.water.Sunshine;

/** The water use of the grass reference, month by month, for the fifteenth of each. */
final class ReferenceYear {

    /** Where the wind is not known (FAO 56, page 63): the mean of more than 2,000 stations. */
    private static final double USUAL_WIND_M_PER_S = 2;

    private static final int ANY_COMMON_YEAR = 2001;

    private final Climate climate;

    private ReferenceYear(Climate climate) {
        this.climate = climate;
    }

    static List<ReferenceMonth> of(Climate climate) {
        ReferenceYear year = new ReferenceYear(climate);
        return Arrays.stream(Month.values()).map(year::month).toList();
    }

    private ReferenceMonth month(Month name) {
        ClimateMonth month = climate.month(name);
        int day = LocalDate.of(ANY_COMMON_YEAR, name, 15).getDayOfYear();
        double latitudeRad = climate.latitude().inRadians();
        double topMj = Sunlight.extraterrestrialMj(latitudeRad, day);
        List<String> estimated = estimated(month);
        if (estimated.size() == 3) {
            double mm = ReferenceEvapotranspiration.hargreavesMm(month.lowC(), month.highC(), topMj);
            return new ReferenceMonth(name, depth(mm), EvapotranspirationMethod.HARGREAVES, estimated);
        }
        double solarMj = solarMj(month, topMj, Sunlight.daylightH(latitudeRad, day));
        double vapourKpa = vapourKpa(month);
        double netMj = Sunlight.netShortwaveMj(solarMj)
                - Sunlight.netLongwaveMj(
                        month.lowC(),
                        month.highC(),
                        vapourKpa,
                        solarMj,
                        Sunlight.clearSkyMj(climate.altitude().metres(), topMj));
        double mm = ReferenceEvapotranspiration.penmanMonteithMm(
                month.meanC(),
                netMj,
                ReferenceEvapotranspiration.soilHeatMj(
                        climate.month(name.minus(1)).meanC(),
                        climate.month(name.plus(1)).meanC()),
                month.wind().map(wind -> wind.si()).orElse(USUAL_WIND_M_PER_S),
                Math.max(0, Vapour.saturationKpa(month.lowC(), month.highC()) - vapourKpa),
                Vapour.psychrometricKpaPerC(
                        Vapour.airPressureKpa(climate.altitude().metres())));
        return new ReferenceMonth(name, depth(mm), EvapotranspirationMethod.PENMAN_MONTEITH, estimated);
    }

    private static List<String> estimated(ClimateMonth month) {
        List<String> estimated = new ArrayList<>();
        if (month.dewC().isEmpty() && month.humidity().isEmpty()) {
            estimated.add("humidity");
        }
        if (!month.sunshine().isKnown()) {
            estimated.add("sunshine");
        }
        if (month.wind().isEmpty()) {
            estimated.add("wind");
        }
        return estimated;
    }

    /** By the dew point, else the humidity, else with the low for a dew point (equation 48). */
    private static double vapourKpa(ClimateMonth month) {
        return month.dewC()
                .map(Vapour::saturationKpa)
                .or(() -> month.humidity()
                        .map(share -> Vapour.fromHumidityKpa(month.lowC(), month.highC(), share.value())))
                .orElseGet(() -> Vapour.saturationKpa(month.lowC()));
    }

    /** As measured, else by the share or the hours of sunshine, else from the temperatures (equation 50). */
    private static double solarMj(ClimateMonth month, double topMj, double daylightH) {
        Sunshine sunshine = month.sunshine();
        return sunshine.solarMj()
                .or(() -> sunshine.share()
                        .map(Ratio::value)
                        .or(() -> sunshine.hours().map(hours -> share(hours, daylightH)))
                        .map(share -> Sunlight.fromSunshineMj(share, topMj)))
                .orElseGet(() ->
                        Sunlight.fromTemperaturesMj(month.lowC(), month.highC(), topMj, Sunlight.INLAND_COEFFICIENT));
    }

    private static double share(double hours, double daylightH) {
        return daylightH > 0 ? Math.min(1, hours / daylightH) : 0;
    }

    /** In a cold, humid month the equation can give a little less than nothing. */
    private static Length depth(double mm) {
        return Length.millimetres(Math.max(0, mm));
    }
}
