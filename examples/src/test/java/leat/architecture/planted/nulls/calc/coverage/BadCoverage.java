package leat.architecture.planted.nulls.calc.coverage;

record BadCoverage(String name) {}
