package leat.calc.hydraulics.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import leat.calc.internal.pipes.Check;
import leat.calc.internal.pipes.PipeLaw;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Solved trees against worked examples of resources/checks/hydraulics.json. Where an example uses the constant 4.52 of
 * the US form, the friction coefficient here is built from it, for it is the solver that is tried.
 */
@Tag("reference")
class TreeSolverReferenceTest {

    private static final double PSI_M = Check.PSI_PA / PipeLaw.PASCALS_PER_M;

    /** Source: net-branch-lateral; data of our own, figures by hand arithmetic. */
    @Test
    void lateralOfFourHeadsOfFixedFlow() throws IOException {
        Check check = Check.named("net-branch-lateral");
        JsonNode segments = check.inputs().get("segments");
        var solver = new TreeSolver(chain(segments.size()));
        for (int i = 0; i < segments.size(); i++) {
            solver.setPipe(i + 1, friction(segments.get(i), check.input("hazen_williams_c")), 0);
            solver.setDemand(i + 1, check.input("head_flow_gpm") * Check.GPM_M3_PER_S);
        }
        solver.solve(check.input("inlet_pressure_psi") * PSI_M);
        expectPressures(check, solver);
    }

    /** Source: net-lateral-pressure-dependent; data of our own, figures by two separate solvers. */
    @Test
    void lateralOfEightHeadsThatDependOnPressure() throws IOException {
        Check check = Check.named("net-lateral-pressure-dependent");
        int heads = (int) check.input("heads");
        var solver = new TreeSolver(chain(heads));
        double k = check.input("k_gpm_per_sqrt_psi") * Check.GPM_M3_PER_S / Math.sqrt(PSI_M);
        for (int i = 1; i <= heads; i++) {
            solver.setPipe(
                    i,
                    friction(
                            check.input("spacing_ft"),
                            check.input("inside_diameter_in"),
                            check.input("hazen_williams_c")),
                    0);
            solver.setOutlet(i, k, 0.5);
        }
        solver.solve(check.input("inlet_pressure_psi") * PSI_M);
        expectPressures(check, solver);
        check.expect("total_flow_gpm", solver.inflowM3PerS() / Check.GPM_M3_PER_S);
    }

    /** Source: net-series; sum of two losses. */
    @Test
    void twoPipesInSeries() throws IOException {
        Check check = Check.named("net-series");
        JsonNode segments = check.inputs().get("segments");
        var solver = new TreeSolver(chain(2));
        for (int i = 0; i < 2; i++) {
            solver.setPipe(i + 1, friction(segments.get(i), check.input("hazen_williams_c")), 0);
        }
        solver.setDemand(2, check.input("flow_gpm") * Check.GPM_M3_PER_S);
        solver.solve(100);
        check.expect("pressure_loss_psi", (100 - solver.headM(2)) / PSI_M);
    }

    /** Source: wd-home-pressure; data of our own: pipe, valve, backflow preventer and rise from the street to a head. */
    @Test
    void pressureAtTheFarthestHeadOfAHome() throws IOException {
        Check check = Check.named("wd-home-pressure");
        var solver = new TreeSolver(chain(1));
        solver.setPipe(
                1,
                friction(check.input("length_ft"), check.input("inside_diameter_in"), check.input("hazen_williams_c")),
                0);
        solver.setDevice(1, (check.input("valve_psi") + check.input("backflow_psi")) * PSI_M, 0, 2);
        solver.setElevation(1, check.input("rise_ft") * Check.FOOT_M);
        solver.setDemand(1, check.input("flow_gpm") * Check.GPM_M3_PER_S);
        solver.solve(check.input("static_psi") * PSI_M);
        check.expect("pressure_psi", solver.pressureM(1) / PSI_M);
    }

    /** Sources: or-sqrt-law and the other exponent records; flow of one head at two pressures. */
    @ParameterizedTest
    @ValueSource(strings = {"or-sqrt-law", "or-sqrt-law-big", "or-exponent-0.5", "or-exponent-0.57", "or-exponent-1.0"})
    void flowOfAHeadGoesWithAPowerOfItsPressure(String id) throws IOException {
        Check check = Check.named(id);
        double first = check.input("pressure_1_psi") * PSI_M;
        double exponent = check.input("exponent");
        double k = check.input("flow_1_gpm") * Check.GPM_M3_PER_S / Math.pow(first, exponent);
        var solver = new TreeSolver(chain(1));
        solver.setPipe(1, 1e-6, 0);
        solver.setOutlet(1, k, exponent);
        solver.solve(check.input("pressure_2_psi") * PSI_M);
        check.expect("flow_2_gpm", solver.outletM3PerS(1) / Check.GPM_M3_PER_S);
    }

    /**
     * Source: an instance of our own with 100 nodes; inflow and pressures as found alike by scipy's sparse and dense
     * solvers, EJML and a hand-written sweep.
     */
    @Test
    void branchedNetworkOfAHundredNodes() throws IOException {
        JsonNode json;
        try (InputStream in = getClass().getResourceAsStream("/bench/a_branched_100.json")) {
            json = JsonMapper.builder().build().readTree(in);
        }
        int count = json.get("parent").size();
        int[] parent = new int[count];
        for (int i = 0; i < count; i++) {
            parent[i] = json.get("parent").get(i).intValue();
        }
        var solver = new TreeSolver(parent);
        for (int i = 1; i < count; i++) {
            double lengthM = json.get("L").get(i).doubleValue();
            double boreM = json.get("D").get(i).doubleValue();
            solver.setPipe(
                    i, PipeLaw.frictionCoefficient(lengthM, boreM, json.get("C").doubleValue()), 0);
            solver.setElevation(i, json.get("z").get(i).doubleValue());
            solver.setOutlet(i, json.get("k").get(i).doubleValue(), 0.5);
        }
        assertEquals(TreeSolver.Status.CONVERGED, solver.solve(json.get("H0").doubleValue()));
        assertEquals(0.0043719981, solver.inflowM3PerS(), 0.5e-10);
    }

    private static int[] chain(int pipes) {
        int[] parent = new int[pipes + 1];
        for (int i = 1; i <= pipes; i++) {
            parent[i] = i - 1;
        }
        return parent;
    }

    private static double friction(JsonNode segment, double c) {
        return friction(
                segment.get("length_ft").doubleValue(),
                segment.get("inside_diameter_in").doubleValue(),
                c);
    }

    /** From p(psi) = 4.52 L q^1.852 / (C^1.852 d^4.87). */
    private static double friction(double lengthFt, double boreIn, double c) {
        double psiAtOneGpm = 4.52 * lengthFt / (Math.pow(c, 1.852) * Math.pow(boreIn, 4.87));
        return psiAtOneGpm * PSI_M / Math.pow(Check.GPM_M3_PER_S, 1.852);
    }

    private static void expectPressures(Check check, TreeSolver solver) {
        JsonNode expected = check.json().get("expected").get("pressure_psi");
        for (int i = 0; i < expected.size(); i++) {
            check.expect(expected.get(i).doubleValue(), solver.pressureM(i + 1) / PSI_M);
        }
    }
}
