package leat.bench;

import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/** Sparse Cholesky by EJML with the order from the leaves to the source, which gives no fill; structure kept. */
final class TreeSparseRival extends TreeNewton {

    private final DMatrixSparseCSC matrix;
    private final int[] diagonalAt;
    private final int[] linkAt;
    private final DMatrixRMaj rightSide;
    private final DMatrixRMaj solution;
    private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
            LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    private boolean locked;

    TreeSparseRival(TreeInstance instance) {
        super(instance);
        int n = instance.nodeCount();
        var triplets = new DMatrixSparseTriplet(n - 1, n - 1, 2 * n);
        for (int i = 1; i < n; i++) {
            triplets.addItem(row(i), row(i), 1);
            if (instance.parent()[i] > 0) {
                triplets.addItem(row(i), row(instance.parent()[i]), -1);
            }
        }
        matrix = DConvertMatrixStruct.convert(triplets, (DMatrixSparseCSC) null);
        matrix.sortIndices(null);
        diagonalAt = new int[n];
        linkAt = new int[n];
        for (int i = 1; i < n; i++) {
            diagonalAt[i] = matrix.nz_index(row(i), row(i));
            linkAt[i] = instance.parent()[i] > 0 ? matrix.nz_index(row(i), row(instance.parent()[i])) : -1;
        }
        rightSide = new DMatrixRMaj(n - 1, 1);
        solution = new DMatrixRMaj(n - 1, 1);
    }

    private int row(int node) {
        return instance.nodeCount() - 1 - node;
    }

    @Override
    public String name() {
        return "ejml-sparse-cholesky-newton";
    }

    @Override
    void solveSystem() {
        for (int i = 1; i < diagonal.length; i++) {
            matrix.nz_values[diagonalAt[i]] = diagonal[i];
            rightSide.data[row(i)] = right[i];
            if (linkAt[i] >= 0) {
                matrix.nz_values[linkAt[i]] = -link[i];
            }
        }
        if (!solver.setA(matrix)) {
            throw new IllegalStateException("matrix is not positive definite");
        }
        if (!locked) {
            solver.setStructureLocked(true);
            locked = true;
        }
        solver.solve(rightSide, solution);
        for (int i = 1; i < headM.length; i++) {
            headM[i] = solution.data[row(i)];
        }
    }
}
