package leat.architecture.planted.services.calc.zoning;

public record GoodResult(int goodZones) {}
