package leat.architecture.planted.model.model.water;

public abstract sealed class GoodSealed {

    public static final class GoodChild extends GoodSealed {}
}
