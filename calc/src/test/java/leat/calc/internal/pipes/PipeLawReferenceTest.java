package leat.calc.internal.pipes;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Friction, velocity, fittings and the weight of water against printed tables. The source of each figure is in its
 * record and in the name of its test; the tolerance is the precision of the print.
 */
@Tag("reference")
class PipeLawReferenceTest {

    static List<Check> checks() throws IOException {
        return Check.all().stream()
                .filter(check -> isOfPipe(check.text("method")))
                .toList();
    }

    private static boolean isOfPipe(String method) {
        return !List.of("branch_lateral", "lateral_pd", "series_us", "home_pressure", "exponent_law")
                .contains(method);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("checks")
    void agreesWithThePrint(Check check) {
        switch (check.text("method")) {
            case "hw_us_head" -> check.expect("head_loss_ft", lossM(check) / Check.FOOT_M);
            case "hw_us_psi" -> check.expect("pressure_loss_psi", psi(lossM(check)));
            case "hw_ratio" -> check.expect("ratio_si_over_us", psi(lossM(check)) / usFormulaPsi(check));
            case "hw_k_si" -> check.expect("k_si", PipeLaw.frictionCoefficient(1, 1, 1));
            case "velocity_us" -> check.expect("velocity_ft_s", velocityFtPerS(check, check.input("flow_gpm")));
            case "flow_at_velocity" ->
                check.expect("flow_gpm", check.input("velocity_ft_s") / velocityFtPerS(check, 1));
            case "minor_loss_us" -> minorLoss(check);
            case "hydrostatic_psi" -> check.expect("pressure_psi", psi(check.input("elevation_ft") * Check.FOOT_M));
            case "head_from_psi" ->
                check.expect(
                        "head_ft", check.input("pressure_psi") * Check.PSI_PA / PipeLaw.PASCALS_PER_M / Check.FOOT_M);
            case "hydrostatic_kpa" ->
                check.expect("pressure_kPa", check.input("head_m") * PipeLaw.PASCALS_PER_M / 1000);
            default -> throw new AssertionError(check);
        }
    }

    private static double lossM(Check check) {
        double r = PipeLaw.frictionCoefficient(
                check.input("length_ft") * Check.FOOT_M,
                check.input("inside_diameter_in") * Check.INCH_M,
                check.input("hazen_williams_c"));
        return PipeLaw.lossM(r, 0, check.input("flow_gpm") * Check.GPM_M3_PER_S);
    }

    private static double velocityFtPerS(Check check, double gpm) {
        double boreM = check.input("inside_diameter_in") * Check.INCH_M;
        return PipeLaw.velocityMPerS(gpm * Check.GPM_M3_PER_S, boreM) / Check.FOOT_M;
    }

    /** A velocity head does not depend on the bore; any will do. */
    private static void minorLoss(Check check) {
        double boreM = 0.02;
        double flow = check.input("velocity_ft_s") * Check.FOOT_M / PipeLaw.velocityMPerS(1, boreM);
        double lossM = PipeLaw.lossM(0, PipeLaw.minorCoefficient(check.input("k_loss"), boreM), flow);
        check.expect("head_loss_ft", lossM / Check.FOOT_M);
        check.expect("pressure_loss_psi", psi(lossM));
    }

    private static double usFormulaPsi(Check check) {
        return 4.52
                * check.input("length_ft")
                * Math.pow(check.input("flow_gpm") / check.input("hazen_williams_c"), 1.852)
                / Math.pow(check.input("inside_diameter_in"), 4.8704);
    }

    private static double psi(double headM) {
        return headM * PipeLaw.PASCALS_PER_M / Check.PSI_PA;
    }
}
