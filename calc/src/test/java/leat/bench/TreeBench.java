package leat.bench;

import java.util.ArrayList;
import java.util.List;
import leat.calc.hydraulics.internal.TreeSolver;
import tools.jackson.databind.JsonNode;

/** Pressures and flows in a branched network with outlets that depend on pressure. */
final class TreeBench implements Bench {

    /** The dense rival needs n² numbers; above this it is left out. */
    private static final int MOST_NODES_DENSE = 1000;

    @Override
    public String name() {
        return "tree";
    }

    @Override
    public String defaultInstance() {
        return "a_branched_100.json";
    }

    @Override
    public Contest contest(JsonNode json) {
        TreeInstance instance = TreeInstance.read(json);
        List<Entrant> rivals = new ArrayList<>();
        rivals.add(new TreeSweepRival(instance));
        rivals.add(new TreeSparseRival(instance));
        if (instance.nodeCount() <= MOST_NODES_DENSE) {
            rivals.add(new TreeDenseRival(instance));
        }
        return new Contest(new Ours(instance), rivals);
    }

    private static final class Ours implements Entrant {

        private final TreeInstance instance;
        private final TreeSolver solver;

        Ours(TreeInstance instance) {
            this.instance = instance;
            solver = new TreeSolver(instance.parent());
            for (int i = 1; i < instance.nodeCount(); i++) {
                solver.setPipe(i, instance.friction()[i], 0);
                solver.setOutlet(i, instance.k()[i], 0.5);
                solver.setElevation(i, instance.elevationM()[i]);
            }
        }

        @Override
        public String name() {
            return "leat";
        }

        @Override
        public double solve() {
            solver.solve(instance.sourceHeadM());
            return solver.inflowM3PerS() + solver.headM(instance.nodeCount() - 1);
        }

        @Override
        public Answer answer() {
            double[] headM = new double[instance.nodeCount()];
            double[] flow = new double[instance.nodeCount()];
            for (int i = 0; i < headM.length; i++) {
                headM[i] = solver.headM(i);
                flow[i] = solver.flowM3PerS(i);
            }
            return instance.answer(solver.inflowM3PerS(), headM, flow);
        }
    }
}
