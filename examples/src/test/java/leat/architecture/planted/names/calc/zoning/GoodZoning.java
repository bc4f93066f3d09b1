package leat.architecture.planted.names.calc.zoning;

public record GoodZoning(String name) {

    public record GoodNested(String name) {}
}
