package leat.architecture.planted.model.model.water;

public enum GoodEnum {
    LEFT,
    RIGHT
}
