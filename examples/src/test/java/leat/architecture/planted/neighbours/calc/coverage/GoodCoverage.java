package leat.architecture.planted.neighbours.calc.coverage;

import leat.architecture.planted.neighbours.calc.coverage.internal.Kernel;

final class GoodCoverage {

    static double wetM2() {
        return Kernel.areaM2(2);
    }
}
