package leat.architecture.planted.assess.calc.coverage;

public final class Coverage {

    private Coverage() {}

    public static int run(int heads) {
        return heads;
    }

    static int goodTwice() {
        return run(1) + run(2);
    }
}
