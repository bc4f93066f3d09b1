package leat.architecture.planted.model.model.water;

public final class GoodFinal {

    private final int count;

    public GoodFinal(int count) {
        this.count = count;
    }

    public int count() {
        return count;
    }
}
