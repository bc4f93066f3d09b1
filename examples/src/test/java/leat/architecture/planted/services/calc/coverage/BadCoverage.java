package leat.architecture.planted.services.calc.coverage;

public final class BadCoverage {

    private static int badRuns;
    private final int badHeads;

    public BadCoverage(int heads) {
        this.badHeads = heads;
    }

    public static int run(int heads) {
        badRuns++;
        return new BadCoverage(heads).badHeads + badRuns;
    }
}
