package leat.architecture.planted.model.model.water;

public sealed interface GoodSource {

    record GoodMains(double pressurePa) implements GoodSource {}
}
