package leat.architecture.planted.nulls.calc.zoning;

record GoodZoning(String name) {}
