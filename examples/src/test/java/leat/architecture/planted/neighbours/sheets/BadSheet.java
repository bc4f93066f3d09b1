package leat.architecture.planted.neighbours.sheets;

import leat.architecture.planted.neighbours.calc.coverage.internal.Kernel;

final class BadSheet {

    static double wetM2() {
        return Kernel.areaM2(2);
    }
}
