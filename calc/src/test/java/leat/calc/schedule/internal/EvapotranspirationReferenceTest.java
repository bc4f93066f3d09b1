package leat.calc.schedule.internal;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The worked examples 2 to 18, 20, 36 and the tables 2.3, 2.4, 2.5, 2.8, 3 of FAO Irrigation and Drainage Paper 56, run
 * times and cycles. The source of each figure is in its record and in the name of its test; the tolerance is the precision
 * of the print.
 */
@Tag("reference")
class EvapotranspirationReferenceTest {

    static List<WateringCheck> checks() throws IOException {
        return WateringCheck.all().stream()
                .filter(check -> !check.text("method").equals("fact"))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("checks")
    void agreesWithThePrint(WateringCheck check) {
        switch (check.text("method")) {
            case "fao_pressure" -> check.expect("pressure_kPa", Vapour.airPressureKpa(check.input("elevation_m")));
            case "fao_gamma" -> check.expect("gamma_kPa_C", Vapour.psychrometricKpaPerC(check.input("pressure_kPa")));
            case "fao_e" -> check.expect("e_kPa", Vapour.saturationKpa(check.input("t_c")));
            case "fao_es" -> saturation(check);
            case "fao_delta" -> check.expect("delta_kPa_C", Vapour.slopeKpaPerC(check.input("t_c")));
            case "fao_psy" -> psychrometer(check);
            case "fao_ea_rh" -> check.expect("ea_kPa", vapourFromRange(check));
            case "fao_ea_rhmean" ->
                check.expect(
                        "ea_kPa",
                        Vapour.fromHumidityKpa(low(check), high(check), check.input("rh_mean_percent") / 100));
            case "fao_vpd" ->
                check.expect("vpd_kPa", Vapour.saturationKpa(low(check), high(check)) - check.input("ea_kPa"));
            case "fao_lat" ->
                check.expect(
                        "radians",
                        check.input("sign") * Math.toRadians(check.input("degrees") + check.input("minutes") / 60));
            case "fao_j" ->
                check.expect(
                        "day_of_year",
                        LocalDate.of(2023, (int) check.input("month"), (int) check.input("day"))
                                .getDayOfYear());
            case "etc" -> check.expect("etc_mm_d", check.input("eto_mm_d") * check.input("kc"));
            default -> agreesOnEnergy(check);
        }
    }

    private static void agreesOnEnergy(WateringCheck check) {
        switch (check.text("method")) {
            case "fao_ra" -> extraterrestrial(check);
            case "fao_mm" -> check.expect("depth_mm_d", Sunlight.depthMm(check.input("energy_MJ_m2_d")));
            case "fao_n" -> check.expect("daylight_h", Sunlight.daylightH(latitudeRad(check), day(check)));
            case "fao_rs" -> {
                check.expect("daylight_h", Sunlight.daylightH(latitudeRad(check), day(check)));
                check.expect("rs_MJ_m2_d", solarMj(check));
            }
            case "fao_rs_temp" -> check.expect("rs_MJ_m2_d", solarFromTemperatures(check, check.input("ra_MJ_m2_d")));
            case "fao_sigma" -> check.expect("sigma_t4_MJ", Sunlight.blackBodyMj(check.input("t_c")));
            case "fao_rnl" ->
                check.expect(
                        "rnl_MJ_m2_d",
                        Sunlight.netLongwaveMj(
                                low(check),
                                high(check),
                                check.input("ea_kPa"),
                                check.input("rs_MJ_m2_d"),
                                check.input("rso_MJ_m2_d")));
            case "fao_rn" -> {
                double shortwave = Sunlight.netShortwaveMj(check.input("rs_MJ_m2_d"));
                check.expect("rns_MJ_m2_d", shortwave);
                check.expect("rn_MJ_m2_d", shortwave - check.input("rnl_MJ_m2_d"));
            }
            case "fao_rn_full" ->
                check.expect(
                        "rn_MJ_m2_d",
                        netRadiation(
                                check, check.input("ea_kPa"), check.input("rs_MJ_m2_d"), check.input("rso_MJ_m2_d")));
            default -> agreesOnUse(check);
        }
    }

    private static void agreesOnUse(WateringCheck check) {
        switch (check.text("method")) {
            case "fao_g" ->
                check.expect(
                        "g_MJ_m2_d",
                        ReferenceEvapotranspiration.soilHeatMj(check.input("t_prev_c"), check.input("t_next_c")));
            case "fao_u2" -> {
                check.expect("factor", ReferenceEvapotranspiration.windAtTwoM(1, check.input("height_m")));
                check.expect("u2_m_s", wind(check, "height_m"));
            }
            case "fao_pm_monthly" -> monthly(check);
            case "fao_pm_daily" -> daily(check);
            case "fao_pm_missing" -> withoutData(check);
            case "fao_hargreaves" ->
                check.expect(
                        "eto_mm_d",
                        ReferenceEvapotranspiration.hargreavesMm(low(check), high(check), check.input("ra_MJ_m2_d")));
            default -> agreesOnWatering(check);
        }
    }

    private static void agreesOnWatering(WateringCheck check) {
        switch (check.text("method")) {
            case "fao_taw" -> {
                double available = SoilWater.availableMm(
                        check.input("theta_fc"), check.input("theta_wp"), check.input("root_depth_m"));
                check.expect("taw_mm", available);
                check.expect("raw_mm", SoilWater.readilyAvailableMm(available, check.input("p")));
            }
            case "fao_padj" ->
                check.expect("p", SoilWater.depletionFraction(check.input("p_table"), check.input("etc_mm_d")));
            case "interval" ->
                check.expect("days", SoilWater.intervalDays(check.input("raw_mm"), check.input("etc_mm_d")));
            case "rtm" ->
                check.expect("run_time_multiplier", Application.runTimeFactor(check.input("du_lq_percent") / 100));
            case "runtime" -> {
                double gross = Application.grossM(check.input("net_in"), 1 / check.input("efficiency"));
                check.expect("minutes", Application.runS(gross, check.input("rate_in_h") / 60));
            }
            case "cycles" -> {
                double minutes = Application.longestCycleS(
                        check.input("rate_in_h") / 60, check.input("intake_in_h") / 60, check.input("storage_in"));
                check.expect("max_cycle_minutes", minutes);
                check.expect("cycles", Application.cycles(check.input("total_minutes"), minutes));
            }
            case "home_runtime" -> {
                double net = check.input("eto_in_d") * check.input("kc") * 7 / check.input("days_per_week");
                double gross = Application.grossM(net, Application.runTimeFactor(check.input("du")));
                check.expect("minutes_per_day", Application.runS(gross, check.input("rate_in_h") / 60));
            }
            default -> throw new AssertionError(check);
        }
    }

    private static void saturation(WateringCheck check) {
        check.expect("e_tmax_kPa", Vapour.saturationKpa(high(check)));
        check.expect("e_tmin_kPa", Vapour.saturationKpa(low(check)));
        check.expect("es_kPa", Vapour.saturationKpa(low(check), high(check)));
    }

    private static void psychrometer(WateringCheck check) {
        double pressure = Vapour.airPressureKpa(check.input("elevation_m"));
        check.expect("pressure_kPa", pressure);
        check.expect(
                "ea_kPa",
                Vapour.fromPsychrometerKpa(
                        check.input("t_dry_c"), check.input("t_wet_c"), pressure, check.input("a_psy")));
    }

    private static void extraterrestrial(WateringCheck check) {
        check.expectIfThere("dr", Sunlight.inverseDistanceRatio(day(check)));
        check.expectIfThere("declination_rad", Sunlight.declinationRad(day(check)));
        check.expectIfThere("sunset_angle_rad", Sunlight.sunsetRad(latitudeRad(check), day(check)));
        check.expect("ra_MJ_m2_d", Sunlight.extraterrestrialMj(latitudeRad(check), day(check)));
    }

    private static void monthly(WateringCheck check) {
        double vapour = check.input("ea_kPa");
        double net = netRadiation(check, vapour, solarMj(check), clearSky(check));
        check.expect("ra_MJ_m2_d", Sunlight.extraterrestrialMj(latitudeRad(check), day(check)));
        check.expect("rn_MJ_m2_d", net);
        double soil = ReferenceEvapotranspiration.soilHeatSoFarMj(check.input("t_prev_c"), check.input("t_month_c"));
        check.expect("eto_mm_d", penmanMonteith(check, net, soil, check.input("u2_m_s"), vapour));
    }

    private static void daily(WateringCheck check) {
        double vapour = vapourFromRange(check);
        double solar = solarMj(check);
        double net = netRadiation(check, vapour, solar, clearSky(check));
        double wind = wind(check, "wind_height_m");
        check.expectIfThere("u2_m_s", wind);
        check.expectIfThere("es_kPa", Vapour.saturationKpa(low(check), high(check)));
        check.expectIfThere("ea_kPa", vapour);
        check.expectIfThere("ra_MJ_m2_d", Sunlight.extraterrestrialMj(latitudeRad(check), day(check)));
        check.expectIfThere("rs_MJ_m2_d", solar);
        check.expectIfThere("rso_MJ_m2_d", clearSky(check));
        check.expectIfThere("rns_MJ_m2_d", Sunlight.netShortwaveMj(solar));
        check.expectIfThere("rnl_MJ_m2_d", Sunlight.netShortwaveMj(solar) - net);
        check.expectIfThere("rn_MJ_m2_d", net);
        check.expect("eto_mm_d", penmanMonteith(check, net, 0, wind, vapour));
    }

    private static void withoutData(WateringCheck check) {
        double vapour = Vapour.saturationKpa(low(check)); // the dew point is taken to be the least temperature
        double top = Sunlight.extraterrestrialMj(latitudeRad(check), day(check));
        double net = netRadiation(check, vapour, solarFromTemperatures(check, top), clearSky(check));
        check.expect("rn_MJ_m2_d", net);
        check.expect("eto_mm_d", penmanMonteith(check, net, 0, check.input("u2_m_s"), vapour));
    }

    private static double penmanMonteith(
            WateringCheck check, double net, double soil, double windMPerS, double vapour) {
        return ReferenceEvapotranspiration.penmanMonteithMm(
                (low(check) + high(check)) / 2,
                net,
                soil,
                windMPerS,
                Vapour.saturationKpa(low(check), high(check)) - vapour,
                Vapour.psychrometricKpaPerC(Vapour.airPressureKpa(check.input("elevation_m"))));
    }

    private static double netRadiation(WateringCheck check, double vapour, double solar, double clearSky) {
        return Sunlight.netShortwaveMj(solar)
                - Sunlight.netLongwaveMj(low(check), high(check), vapour, solar, clearSky);
    }

    private static double clearSky(WateringCheck check) {
        return Sunlight.clearSkyMj(
                check.input("elevation_m"), Sunlight.extraterrestrialMj(latitudeRad(check), day(check)));
    }

    private static double solarMj(WateringCheck check) {
        double share = check.input("sunshine_h_d") / Sunlight.daylightH(latitudeRad(check), day(check));
        return Sunlight.fromSunshineMj(share, Sunlight.extraterrestrialMj(latitudeRad(check), day(check)));
    }

    private static double solarFromTemperatures(WateringCheck check, double top) {
        return Sunlight.fromTemperaturesMj(low(check), high(check), top, check.input("k_rs"));
    }

    private static double vapourFromRange(WateringCheck check) {
        return Vapour.fromHumidityKpa(
                low(check), high(check), check.input("rh_max_percent") / 100, check.input("rh_min_percent") / 100);
    }

    private static double wind(WateringCheck check, String height) {
        return ReferenceEvapotranspiration.windAtTwoM(check.input("wind_m_s"), check.input(height));
    }

    private static double low(WateringCheck check) {
        return check.input("tmin_c");
    }

    private static double high(WateringCheck check) {
        return check.input("tmax_c");
    }

    private static double latitudeRad(WateringCheck check) {
        return Math.toRadians(check.input("latitude_deg"));
    }

    private static int day(WateringCheck check) {
        return (int) check.input("day_of_year");
    }
}
