package leat.architecture.planted.services.calc.zoning;

public final class GoodZoning {

    private static final int GOOD_MOST = 9;

    private GoodZoning() {}

    public static int run(int heads) {
        return Math.min(heads, GOOD_MOST);
    }
}
