package leat.calc.hydraulics.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;

/** Laws that every solved tree must keep, whatever it looks like; the seed is the number of the repetition. */
@Tag("law")
class TreeSolverLawTest {

    private static final int TREES_A_TURN = 500;

    /** Starved trees full of devices that hold the water back are hard; one in a thousand may end without an answer. */
    @RepeatedTest(10)
    void everyLawHoldsInAnyTree(RepetitionInfo turn) {
        int unsolved = 0;
        for (int i = 0; i < TREES_A_TURN; i++) {
            long seed = turn.getCurrentRepetition() * 1000L + i;
            RandomTree tree = RandomTree.wild(seed, 40);
            TreeSolver solver = tree.solver();
            if (solver.solve(tree.sourceHeadM) == TreeSolver.Status.CONVERGED) {
                assertLawsHold(tree, solver, "seed " + seed);
            } else {
                unsolved++;
            }
        }
        assertTrue(unsolved <= TREES_A_TURN / 500, unsolved + " unsolved");
    }

    @RepeatedTest(500)
    void ordinaryTreesAreSolvedInFewSteps(RepetitionInfo turn) {
        RandomTree tree = RandomTree.plain(turn.getCurrentRepetition(), 60);
        TreeSolver solver = tree.solver();
        assertEquals(TreeSolver.Status.CONVERGED, solver.solve(tree.sourceHeadM));
        assertTrue(solver.steps() <= 20, "steps " + solver.steps());
        assertLawsHold(tree, solver, "");
    }

    private static void assertLawsHold(RandomTree tree, TreeSolver solver, String seed) {
        double[] balance = new double[tree.count];
        double total = 1e-9 + tree.inflow(solver);
        for (int i = tree.count - 1; i > 0; i--) {
            String place = seed + " node " + i;
            double q = solver.flowM3PerS(i);
            double upstreamM = solver.headM(tree.parent[i]);
            assertEquals(tree.lossM(i, q), upstreamM - solver.headM(i), 1e-8, place + ": loss");
            double out = solver.outletM3PerS(i);
            double pressureM = solver.headM(i) - tree.elevationM[i];
            double lawful = tree.outflow(i, pressureM);
            double slack = Math.abs(tree.outflow(i, pressureM + 1e-8) - lawful);
            assertEquals(lawful, out, 1e-9 * total + slack, place + ": outlet");
            balance[i] += q - out - tree.demand[i];
            balance[tree.parent[i]] -= q;
            assertEquals(0, balance[i], 1e-11 * total + 1e-13, place + ": balance");
        }
        assertEquals(tree.inflow(solver), solver.inflowM3PerS(), 1e-11 * total + 1e-13, seed + ": inflow");
    }

    @RepeatedTest(20)
    void agreesWithBisectionOutletByOutlet(RepetitionInfo turn) {
        RandomTree tree = RandomTree.plain(turn.getCurrentRepetition(), 12);
        TreeSolver solver = tree.solver();
        solver.solve(tree.sourceHeadM);
        double[] outflow = new SlowSolver(tree).outflows();
        for (int i = 1; i < tree.count; i++) {
            assertEquals(outflow[i], solver.outletM3PerS(i), 1e-9 * tree.inflow(solver), "node " + i);
        }
    }

    @RepeatedTest(200)
    void moreSupplyGivesMorePressureEverywhere(RepetitionInfo turn) {
        RandomTree tree = RandomTree.plain(turn.getCurrentRepetition(), 40);
        TreeSolver low = tree.solver();
        TreeSolver high = tree.solver();
        low.solve(tree.sourceHeadM);
        high.solve(tree.sourceHeadM + 0.5);
        for (int i = 1; i < tree.count; i++) {
            assertTrue(high.pressureM(i) > low.pressureM(i), "node " + i);
            assertTrue(high.outletM3PerS(i) >= low.outletM3PerS(i), "node " + i);
        }
    }

    /** If each loss coefficient shrinks by s^1.852 and each orifice grows by s, all flows grow by s at equal heads. */
    @RepeatedTest(200)
    void flowsScaleWithBoresAndOrifices(RepetitionInfo turn) {
        RandomTree tree = RandomTree.plain(turn.getCurrentRepetition(), 40);
        TreeSolver plain = tree.solver();
        plain.solve(tree.sourceHeadM);
        TreeSolver scaled = tree.solver();
        double scale = 3;
        for (int i = 1; i < tree.count; i++) {
            scaled.setPipe(i, tree.friction[i] / Math.pow(scale, 1.852), 0);
            scaled.setOutlet(i, scale * tree.size[i], 0.5);
        }
        scaled.solve(tree.sourceHeadM);
        for (int i = 1; i < tree.count; i++) {
            assertEquals(plain.headM(i), scaled.headM(i), 1e-8, "node " + i);
            assertEquals(scale * plain.flowM3PerS(i), scaled.flowM3PerS(i), 1e-9 * scaled.inflowM3PerS(), "node " + i);
        }
    }

    @RepeatedTest(100)
    void solvingAgainGivesTheSameBits(RepetitionInfo turn) {
        RandomTree tree = RandomTree.wild(turn.getCurrentRepetition(), 40);
        TreeSolver fresh = tree.solver();
        fresh.solve(tree.sourceHeadM);
        TreeSolver used = tree.solver();
        used.solve(tree.sourceHeadM + 7);
        used.solve(tree.sourceHeadM);
        for (int i = 0; i < tree.count; i++) {
            assertEquals(fresh.headM(i), used.headM(i), 0.0, "node " + i);
            assertEquals(fresh.flowM3PerS(i), used.flowM3PerS(i), 0.0, "node " + i);
        }
    }

    @RepeatedTest(100)
    void headIsThatUpstreamLessTheLossBitForBit(RepetitionInfo turn) {
        RandomTree tree = RandomTree.wild(turn.getCurrentRepetition(), 40);
        TreeSolver solver = tree.solver();
        solver.solve(tree.sourceHeadM);
        for (int i = 1; i < tree.count; i++) {
            assertEquals(solver.headM(tree.parent[i]) - solver.lossM(i), solver.headM(i), 0.0, "node " + i);
        }
    }
}
