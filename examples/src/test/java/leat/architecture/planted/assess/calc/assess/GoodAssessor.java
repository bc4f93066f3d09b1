package leat.architecture.planted.assess.calc.assess;

import leat.architecture.planted.assess.calc.coverage.Coverage;

final class GoodAssessor {

    static int all() {
        return Coverage.run(1) + 1;
    }
}
