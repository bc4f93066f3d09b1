package leat.bench;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/** What a user writes first: the same Newton steps with a dense matrix (EJML, Cholesky). */
final class TreeDenseRival extends TreeNewton {

    private final DMatrixRMaj matrix;
    private final DMatrixRMaj rightSide;
    private final DMatrixRMaj solution;
    private final LinearSolverDense<DMatrixRMaj> solver;

    TreeDenseRival(TreeInstance instance) {
        super(instance);
        int rows = instance.nodeCount() - 1;
        matrix = new DMatrixRMaj(rows, rows);
        rightSide = new DMatrixRMaj(rows, 1);
        solution = new DMatrixRMaj(rows, 1);
        solver = LinearSolverFactory_DDRM.chol(rows);
    }

    @Override
    public String name() {
        return "ejml-dense-cholesky-newton";
    }

    @Override
    void solveSystem() {
        matrix.zero();
        for (int i = 1; i < diagonal.length; i++) {
            int parent = instance.parent()[i];
            matrix.set(i - 1, i - 1, diagonal[i]);
            rightSide.set(i - 1, 0, right[i]);
            if (parent > 0) {
                matrix.set(i - 1, parent - 1, -link[i]);
                matrix.set(parent - 1, i - 1, -link[i]);
            }
        }
        if (!solver.setA(matrix)) {
            throw new IllegalStateException("matrix is not positive definite");
        }
        solver.solve(rightSide, solution);
        System.arraycopy(solution.data, 0, headM, 1, headM.length - 1);
    }
}
