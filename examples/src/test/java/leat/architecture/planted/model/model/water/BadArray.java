package leat.architecture.planted.model.model.water;

public record BadArray(double[] badRadiiM) {}
