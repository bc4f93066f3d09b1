package leat.architecture.planted.quantities.calc.coverage;

public record BadResult(double wet) {}
