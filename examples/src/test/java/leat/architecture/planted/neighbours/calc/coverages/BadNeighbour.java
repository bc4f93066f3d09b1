package leat.architecture.planted.neighbours.calc.coverages;

import leat.architecture.planted.neighbours.calc.coverage.internal.Kernel;

final class BadNeighbour {

    static double wetM2() {
        return Kernel.areaM2(2);
    }
}
