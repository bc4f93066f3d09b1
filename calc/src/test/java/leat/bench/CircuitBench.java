package leat.bench;

import java.util.ArrayList;
import java.util.List;
import leat.calc.wiring.internal.CableTree;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import tools.jackson.databind.JsonNode;

/**
 * Currents and voltage drops of a branched circuit. The tree of pipes of the instance is read as one of cables: {@code L}
 * long, of {@link #OHM_PER_M} there and back, with half an ampere drawn at each node.
 */
final class CircuitBench implements Bench {

    /** About that of copper of 2.5 mm², there and back; the ratio of times does not depend on it. */
    private static final double OHM_PER_M = 0.015;

    private static final double LOAD_A = 0.5;

    @Override
    public String name() {
        return "circuit";
    }

    @Override
    public String defaultInstance() {
        return "a_branched_100.json";
    }

    @Override
    public Contest contest(JsonNode json) {
        int[] parent = TreeInstance.ints(json.get("parent"));
        double[] ohm = TreeInstance.doubles(json.get("L"));
        double[] loadA = new double[parent.length];
        for (int i = 0; i < ohm.length; i++) {
            ohm[i] *= OHM_PER_M;
            loadA[i] = i == 0 ? 0 : LOAD_A;
        }
        return new Contest(
                new Ours(parent, ohm, loadA),
                List.of(new ObjectRival(parent, ohm, loadA), new NodalRival(parent, ohm, loadA)));
    }

    private static Answer answer(double[] dropV) {
        return new Answer().series("drop_v", dropV, 1e-9, 1e-12);
    }

    private static final class Ours implements Entrant {
        private final int[] parent;
        private final double[] ohm;
        private final double[] loadA;
        private final double[] currentA;
        private final double[] dropV;

        Ours(int[] parent, double[] ohm, double[] loadA) {
            this.parent = parent;
            this.ohm = ohm;
            this.loadA = loadA;
            currentA = new double[parent.length];
            dropV = new double[parent.length];
        }

        @Override
        public String name() {
            return "leat";
        }

        @Override
        public double solve() {
            CableTree.currents(parent, loadA, currentA);
            CableTree.drops(parent, ohm, currentA, dropV);
            return dropV[dropV.length - 1];
        }

        @Override
        public Answer answer() {
            return CircuitBench.answer(dropV);
        }
    }

    /** One object a node with a list of children, walked by recursion. */
    private static final class ObjectRival implements Entrant {

        private static final class Node {
            final double ohm;
            final double loadA;
            final List<Node> children = new ArrayList<>();
            double currentA;
            double dropV;

            Node(double ohm, double loadA) {
                this.ohm = ohm;
                this.loadA = loadA;
            }

            double draw() {
                currentA = loadA;
                for (Node child : children) {
                    currentA += child.draw();
                }
                return currentA;
            }

            void lose(double beforeV) {
                dropV = beforeV + currentA * ohm;
                for (Node child : children) {
                    child.lose(dropV);
                }
            }
        }

        private final List<Node> nodes = new ArrayList<>();

        ObjectRival(int[] parent, double[] ohm, double[] loadA) {
            for (int i = 0; i < parent.length; i++) {
                var node = new Node(i == 0 ? 0 : ohm[i], loadA[i]);
                nodes.add(node);
                if (i > 0) {
                    nodes.get(parent[i]).children.add(node);
                }
            }
        }

        @Override
        public String name() {
            return "tree-of-objects";
        }

        @Override
        public double solve() {
            nodes.get(0).draw();
            nodes.get(0).lose(0);
            return nodes.get(nodes.size() - 1).dropV;
        }

        @Override
        public Answer answer() {
            return CircuitBench.answer(
                    nodes.stream().mapToDouble(node -> node.dropV).toArray());
        }
    }

    /** Nodal analysis: conductances times drops are the loads, by sparse Cholesky that keeps its factor. */
    private static final class NodalRival implements Entrant {
        private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
                LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
        private final DMatrixRMaj loadA;
        private final DMatrixRMaj dropV;

        /** Rows run from the leaves to the panel, which gives no fill. */
        NodalRival(int[] parent, double[] ohm, double[] load) {
            int rows = parent.length - 1;
            var triplets = new DMatrixSparseTriplet(rows, rows, 3 * rows);
            double[] diagonal = new double[parent.length];
            loadA = new DMatrixRMaj(rows, 1);
            dropV = new DMatrixRMaj(rows, 1);
            for (int i = rows; i > 0; i--) {
                diagonal[i] += 1 / ohm[i];
                diagonal[parent[i]] += 1 / ohm[i];
                triplets.addItem(rows - i, rows - i, diagonal[i]);
                if (parent[i] > 0) {
                    triplets.addItem(rows - i, rows - parent[i], -1 / ohm[i]);
                    triplets.addItem(rows - parent[i], rows - i, -1 / ohm[i]);
                }
                loadA.set(rows - i, 0, load[i]);
            }
            DMatrixSparseCSC matrix = DConvertMatrixStruct.convert(triplets, (DMatrixSparseCSC) null);
            matrix.sortIndices(null);
            if (!solver.setA(matrix)) {
                throw new IllegalStateException("matrix is not positive definite");
            }
        }

        @Override
        public String name() {
            return "ejml-sparse-cholesky-factored-before";
        }

        @Override
        public double solve() {
            solver.solve(loadA, dropV);
            return dropV.get(0, 0);
        }

        @Override
        public Answer answer() {
            double[] byNode = new double[dropV.numRows + 1];
            for (int i = 1; i < byNode.length; i++) {
                byNode[i] = dropV.get(byNode.length - 1 - i, 0);
            }
            return CircuitBench.answer(byNode);
        }
    }
}
