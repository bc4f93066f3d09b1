package leat.architecture.planted.model.model.water;

public final class BadField {

    private int badCount;

    public int next() {
        return badCount++;
    }
}
