package leat.architecture.planted.assess.calc.zoning;

import leat.architecture.planted.assess.calc.coverage.Coverage;

public final class BadZoning {

    private BadZoning() {}

    public static int run(int heads) {
        return Coverage.run(heads);
    }
}
